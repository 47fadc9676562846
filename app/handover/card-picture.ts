import type { Card } from '../../core/exchange/card.ts';
import { figureWords } from '../words/figure-words.ts';
import { handoverWords } from '../words/handover-words.ts';
import { words } from '../words/words.ts';
import { cardDrill, cardSets, cardUsual } from './card-words.ts';

/** Pixels: as wide as chats show a picture without making it smaller. */
const WIDTH = 1080;
const EDGE = 72;
/** Painted light in every theme, for paper and chats. */
const PAPER = '#fffdf8';
const INK = '#1d1a16';

/** The card as a PNG, for the family's chat; its height follows what is on it. */
export async function cardPicture(card: Card): Promise<File | undefined> {
  const f = figureWords.value;
  const lines: [text: string, size: number, weight: number, before: number][] = [
    [card.name, 88, 800, 40],
    [words.value.date(card.date), 40, 400, 20],
    [
      `${card.all ? '' : `${f.atLeast} `}${f.number(card.all?.touches ?? card.counted)} ${handoverWords.value.card.touches}`,
      72,
      800,
      60,
    ],
    [
      card.all
        ? `${f.atLeast} ${f.number(card.counted)}, ${f.span(f.number(card.all.low), f.number(card.all.high))}`
        : '',
      40,
      400,
      16,
    ],
    ...card.works.flatMap((work): [string, number, number, number][] => [
      [cardDrill(work), 48, 700, 56],
      [`${words.value.number(work.sets)} ${cardSets(work)}`, 56, 800, 12],
      [cardUsual(work), 40, 400, 12],
    ]),
  ];
  const canvas = document.createElement('canvas');
  canvas.width = WIDTH;
  canvas.height =
    2 * EDGE + lines.reduce((sum, [, size, , before]) => sum + before + 1.25 * size, 0);
  const context = canvas.getContext('2d');
  if (!context) return undefined;
  context.fillStyle = PAPER;
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.strokeStyle = INK;
  context.lineWidth = 12;
  context.strokeRect(24, 24, canvas.width - 48, canvas.height - 48);
  context.fillStyle = INK;
  context.textBaseline = 'top';
  context.direction = words.value.direction as CanvasDirection;
  let y = EDGE;
  for (const [text, size, weight, before] of lines) {
    y += before;
    context.font = `${weight} ${size}px system-ui, sans-serif`;
    // A name too long for the line is set narrower, never cut.
    context.fillText(text, EDGE, y, WIDTH - 2 * EDGE);
    y += 1.25 * size;
  }
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  return blob ? new File([blob], 'rally-ledger-card.png', { type: 'image/png' }) : undefined;
}
