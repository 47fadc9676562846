/**
 * Entry ids that sort in the order in which things happened, on one phone and over several.
 *
 * A stamp is a time, a counter and the writer: `mi9x3k2f0-000-V1StGXR8`. It never runs backwards:
 * where the phone's clock stands still or falls behind, the last time is kept and the counter goes
 * on (a hybrid logical clock, Kulkarni et al. 2014). Two writers never make the same stamp, so a
 * stamp serves as the entry's id.
 */

const TIME = 9; // base-36 digits of milliseconds: enough until the year 5188
const COUNTER = 3; // base-36 digits: 46,656 entries before a millisecond is borrowed
const COUNTERS = 36 ** COUNTER;

/** The shape of a stamp; 8 to 21 characters name the writer. */
export const STAMP = /^[0-9a-z]{9}-[0-9a-z]{3}-[\w-]{8,21}$/;

const pad = (value: number, digits: number) => value.toString(36).padStart(digits, '0');

/** The milliseconds since 1970 that a stamp was made at, as its writer's clock stood or later. */
export const stampTime = (stamp: string): number => Number.parseInt(stamp.slice(0, TIME), 36);

/** Letters that name a phone, and those that name one page of the app on it. */
const PHONE = 10;
const PAGE = 6;

/** The writer of a page's stamps: the phone's name of 10 letters, then the page's of 6. */
export function writerOf(phone: string, page: string): string {
  if (phone.length !== PHONE) throw new RangeError(`phone must have ${PHONE} letters`);
  if (page.length !== PAGE) throw new RangeError(`page must have ${PAGE} letters`);
  return phone + page;
}

/** The phone that made a stamp; '' where an earlier version did, which told only its page. */
export function phoneOf(stamp: string): string {
  const writer = stamp.slice(TIME + 1 + COUNTER + 1);
  return writer.length === PHONE + PAGE ? writer.slice(0, PHONE) : '';
}

/**
 * The next stamp of a writer.
 *
 * @param last the greatest stamp this writer has made or seen, or '' where there is none
 * @param now milliseconds since 1970, as the phone's clock has it; it may stutter or fall back
 * @param writer 8 to 21 characters, drawn anew for each window that writes
 */
export function nextStamp(last: string, now: number, writer: string): string {
  if (!Number.isFinite(now) || now < 0) throw new RangeError(`now is not a time: ${now}`);
  let time = Math.floor(now);
  let counter = 0;
  if (last !== '' && stampTime(last) >= time) {
    time = stampTime(last);
    counter = Number.parseInt(last.slice(TIME + 1, TIME + 1 + COUNTER), 36) + 1;
    if (counter === COUNTERS) {
      time += 1;
      counter = 0;
    }
  }
  return `${pad(time, TIME)}-${pad(counter, COUNTER)}-${writer}`;
}
