import { useMemo } from 'preact/hooks';
import { type Family, families } from '../../core/drill/drill.ts';
import type { PairRecord } from '../../core/figures/pair-record.ts';
import { pairRecords } from '../../core/figures/pair-records.ts';
import { fitPartners, type PartnerFit } from '../../core/figures/partners.ts';
import { lastWeeks } from '../../core/figures/review.ts';
import { comparable, groups, neverParted } from '../../core/figures/told-apart.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { squad } from '../ledger.ts';
import { Explained } from '../parts/explained.tsx';
import { namesOf, playerName } from '../parts/names.ts';
import { figureWords } from '../words/figure-words.ts';
import { words } from '../words/words.ts';

const WEEKS = 8;

/** What each player brings along to whichever partner, by family; for the coach, with care. */
export function PartnerPart({ summaries }: { summaries: Summary[] }) {
  const t = figureWords.value.review;
  const recent = lastWeeks(summaries, WEEKS).now;
  return (
    <section class="part" aria-labelledby="partners">
      <h2 id="partners">{t.partners}</h2>
      <p>{t.partnersNote}</p>
      {families.map((family) => (
        <FamilyPartners key={family} family={family} records={pairRecords(recent, family)} />
      ))}
      <p class="small">{t.onTargetOwn}</p>
    </section>
  );
}

function FamilyPartners({ family, records }: { family: Family; records: PairRecord[] }) {
  const f = figureWords.value;
  const t = f.review;
  // The fit takes a while, and the records are mostly the same ones when the screen is drawn again.
  const fit = useMemo(() => fitPartners(records), [JSON.stringify(records)]);
  return (
    <div class="review-work">
      <h3>{words.value.families[family]}</h3>
      {!fit ? (
        <p>{t.noRecords}</p>
      ) : fit.sigma === 0 ? (
        <Explained of="partner">
          {t.noDifference(f.rate(fit.players[0]?.rateWithAveragePartner ?? 0))}
        </Explained>
      ) : (
        <dl class="review-figures">
          {inSquadOrder(fit.players).map(({ id, low, high, rateWithAveragePartner }) => (
            <div key={id}>
              <dt class="break">{playerName(id)}</dt>
              <dd>
                <Explained of="partner">
                  {low !== undefined && high !== undefined && (
                    <b>{t.partnerRate(f.rate(low), f.rate(high))}</b>
                  )}
                  , {t.partnerMiddle(f.rate(rateWithAveragePartner))}
                </Explained>
              </dd>
            </div>
          ))}
        </dl>
      )}
      {fit && <NotToldApart records={records} />}
    </div>
  );
}

function inSquadOrder(players: PartnerFit['players']): PartnerFit['players'] {
  const place = new Map([...squad.value.keys()].map((id, at) => [id, at]));
  const placeOf = (id: string) => place.get(id) ?? place.size;
  return players.toSorted((a, b) => placeOf(a.id) - placeOf(b.id));
}

/** Whose effect cannot be told from whose, in plain words. */
function NotToldApart({ records }: { records: PairRecord[] }) {
  const t = figureWords.value.review;
  const never = neverParted(records);
  const apart = groups(records);
  const classes = comparable(records);
  return (
    <>
      {never.map(({ player, partner }) => {
        const both = never.some((other) => other.player === partner && other.partner === player);
        // Two who were never parted are in the list twice; one sentence does.
        if (both && partner < player) return null;
        const said = both ? t.neverPartedBoth : t.neverParted;
        return <p key={player}>{said(playerName(player), playerName(partner))}</p>;
      })}
      {apart.length > 1 ? (
        <p>{t.groups(apart.map(namesOf))}</p>
      ) : (
        never.length === 0 && classes.length > 1 && <p>{t.classes(classes.map(namesOf))}</p>
      )}
    </>
  );
}
