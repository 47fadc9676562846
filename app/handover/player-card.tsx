import type { Card, CardWork } from '../../core/exchange/card.ts';
import { figureWords } from '../words/figure-words.ts';
import { handoverWords } from '../words/handover-words.ts';
import { words } from '../words/words.ts';
import { cardDrill, cardSets, cardUsual } from './card-words.ts';
import './card.css';

/** A player's card as it is read: the own day, and nobody else's. */
export function PlayerCard({ card }: { card: Card }) {
  const f = figureWords.value;
  return (
    <article class="card" aria-labelledby="card-name">
      <h2 id="card-name" class="break">
        {card.name}
      </h2>
      <p class="faint">{words.value.date(card.date)}</p>
      <p class="card-total">
        {!card.all && `${f.atLeast} `}
        <b class="number">{f.number(card.all?.touches ?? card.counted)}</b>{' '}
        {handoverWords.value.card.touches}
      </p>
      {card.all && (
        <p>
          {f.atLeast} {f.number(card.counted)},{' '}
          {f.span(f.number(card.all.low), f.number(card.all.high))}
        </p>
      )}
      {card.works.map((work) => (
        <Work key={`${work.drill} ${work.rule} ${work.size}`} work={work} />
      ))}
    </article>
  );
}

function Work({ work }: { work: CardWork }) {
  return (
    <div class="card-work">
      <h3 class="break">{cardDrill(work)}</h3>
      <p class="small faint">{words.value.setCounts(work.rule, work.size)}</p>
      <p>
        <b class="number">{words.value.number(work.sets)}</b> {cardSets(work)}
      </p>
      <p>{cardUsual(work)}</p>
    </div>
  );
}
