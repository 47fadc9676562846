import type { ComponentChildren } from 'preact';
import { OVERDUE } from '../../core/figures/coverage.ts';
import type { Finding } from '../../core/planning/findings.ts';
import { Button } from '../parts/button.tsx';
import { playerName } from '../parts/names.ts';
import { go, href } from '../route.ts';
import { drillName } from '../words/drill-text.ts';
import { lookWords } from '../words/look-words.ts';
import { planningWords } from '../words/planning-words.ts';
import { words } from '../words/words.ts';
import { PairThem, PutIn, SetSize } from './deeds.tsx';
import { LeftOutPicture, LinePicture, NeedPicture, PairPicture, SizePicture } from './pictures.tsx';

/** A finding: its picture and one sentence, which lead to what it rests on, and what can be done. */
export function FindingRow({ finding }: { finding: Finding }) {
  const look = lookWords.value;
  const t = look.evening;
  switch (finding.about) {
    case 'left-out': {
      const { stroke, left, drill } = finding;
      const without = left.players.filter(({ overdue }) => overdue).length;
      return (
        <Row
          to={href('neglected')}
          picture={<LeftOutPicture players={left.players} />}
          deed={drill && <PutIn drill={drill.id} />}
        >
          {t.leftOut(planningWords.value.coverage.strokes[stroke], without, OVERDUE.after)}
        </Row>
      );
    }
    case 'size': {
      const { fit } = finding;
      const { terms, expected, verdict } = fit;
      return (
        <Row
          to={href('sizes')}
          picture={<SizePicture sets={expected} />}
          deed={<SetSize fit={fit} />}
        >
          {t.size[verdict === 'easy' ? 'easy' : 'hard'](drillName(terms), terms.size, expected)}
        </Row>
      );
    }
    case 'pair': {
      const { players, days } = finding.partners;
      const [a = '', b = ''] = players.map(playerName);
      return (
        <Row
          to={href('together')}
          picture={<PairPicture names={[a, b]} />}
          deed={<PairThem players={players} />}
        >
          {t.partners(a, b, days)}
        </Row>
      );
    }
    case 'need': {
      const { need, drill } = finding;
      return (
        <Row
          to={href('line', need.player, need.kind)}
          picture={<NeedPicture need={need} />}
          deed={drill && <PutIn drill={drill.id} />}
        >
          {t.need(playerName(need.player), words.value.families[need.kind])}
        </Row>
      );
    }
    case 'change': {
      const { word, line, rising, falling } = finding;
      const [before, now] = [line[0], line.at(-1)];
      const said =
        word === 'rising' || word === 'falling'
          ? t.change[word](
              look.percent(now?.share ?? 0),
              look.percent(before?.share ?? 0),
              Math.round(before?.weeksAgo ?? 0),
            )
          : t.change[word](look.percent(now?.share ?? 0));
      return (
        <Row
          to={href('glance')}
          picture={<LinePicture line={line} />}
          deed={
            <Button class="deed" onClick={() => go('glance')}>
              {look.glance.title}
            </Button>
          }
        >
          {[
            said,
            rising.length > 0 && t.up(rising.map(playerName)),
            falling.length > 0 && t.down(falling.map(playerName)),
          ]
            .filter(Boolean)
            .join(' ')}
        </Row>
      );
    }
  }
}

function Row({
  to,
  picture,
  deed,
  children,
}: {
  to: string;
  picture: ComponentChildren;
  deed: ComponentChildren;
  children: ComponentChildren;
}) {
  return (
    <li class="finding">
      <a class="finding-said" href={to}>
        {picture}
        <span class="grow break">{children}</span>
      </a>
      {deed}
    </li>
  );
}
