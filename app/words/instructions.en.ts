import type { StarterDrillId } from '../../core/drill/starter-drills.ts';
import type { StarterInstructions } from './drill-instructions.ts';

/*
 * How the starter drills are run, in English, for an assistant who never saw them. The distances are
 * those of the markers.
 */

const both = (task: string): [string, string] => [task, task];

const rally =
  '1 drops a ball and hits it gently into play; after a miss, whoever missed feeds a ball from the pocket.';
const fromBaseline =
  '1 feeds every ball gently from the baseline, the first one and again after each miss.';
const atNet =
  '1 feeds a soft ball at chest height; after a miss, whoever missed feeds a ball from the pocket.';
const drop =
  '1 drops a ball and plays it as ball one; after a miss, or a finished set, 1 starts anew once both are ready.';
const lob =
  '1 drops a ball and lobs it as ball one; after a miss, or a finished set, 1 lobs anew once 2 is back and looks up.';
const serve =
  'Begin on the deuce side, as drawn, and change sides after each set. After a fault or a miss, 1 serves anew from the same side once 2 is ready.';
const oneSide = (side: string, other: string) =>
  `This round from the ${side} side, as drawn; the next one mirrored, from the ${other} side. After a fault or a miss, 1 serves anew once 2 is ready.`;

const own = 'Every ball that bounces in your half of the court; the feed does not.';
const diagonal = 'Every ball that bounces in the half diagonally opposite; the feed does not.';
const inTheAir =
  'Every volley in the air that the partner can reach; a ball that bounces is a miss, and the feed does not count.';
const onTarget =
  'Each ball that bounces in the target, lines included; the rally goes on whether it does or not. The feed does not count.';

export const instructions: Record<StarterDrillId, StarterInstructions> = {
  'mini-rally': {
    roles: ['Rally', 'Rally'],
    tasks: both('a step behind the service line, the ball bouncing once in front of it'),
    feed: rally,
    counts:
      'Every ball that bounces once in your lane, in front of the service line; the feed does not.',
    setup:
      'Lane markers on both service lines, 1.83 m from the centre line, make room for three pairs.',
  },
  'cross-court-deuce': {
    roles: ['Baseline', 'Baseline'],
    tasks: both('at the baseline, only cross-court, back to the marker after each ball'),
    feed: rally,
    counts: diagonal,
    setup:
      'Recovery markers 0.50 m behind both baselines, 0.60 m from the centre mark on the side you play from.',
  },
  'cross-court-ad': {
    roles: ['Baseline', 'Baseline'],
    tasks: both('at the baseline, only cross-court, back to the marker after each ball'),
    feed: rally,
    counts: diagonal,
    setup:
      'Recovery markers 0.50 m behind both baselines, 0.60 m from the centre mark on the side you play from.',
  },
  'half-court-rally': {
    roles: ['Baseline', 'Baseline'],
    tasks: both('at the baseline, only straight, inside your own half'),
    feed: rally,
    counts: own,
    setup: 'Lane markers in line with the centre line, 9.00 m from the net on both sides.',
  },
  'long-rally': {
    roles: ['Baseline', 'Baseline'],
    tasks: both('at the baseline, every ball down the middle and none to win the point'),
    feed: rally,
    counts:
      'Every ball in the singles court: the lane between the markers is the aim and no must. The feed does not count.',
    setup:
      'Lane markers 9.00 m from the net, 2.00 m from the centre line, on both sides, for a lane down the middle.',
  },
  'crosses-and-lines': {
    roles: ['Cross', 'Line'],
    tasks: ['plays every ball cross-court', 'plays every ball down the line'],
    feed: '1 feeds gently cross-court from the middle, the first ball and again after each miss.',
    counts:
      'Every ball in the singles court that goes its player’s way: four of them are once round. The feed does not count.',
    setup: 'Recovery markers 0.50 m behind both baselines, in line with the centre mark.',
  },
  'slice-and-drive': {
    roles: ['Slice', 'Drive'],
    tasks: ['slices every ball, low over the net', 'answers every ball with topspin'],
    feed: rally,
    counts: own,
    setup: 'Recovery markers 0.50 m behind both baselines, 2.00 m from the centre mark.',
  },
  'third-ball-down-the-line': {
    roles: ['Line', 'Cross'],
    tasks: ['hits ball one cross-court and ball three down the line', 'hits only cross-court'],
    feed: drop,
    counts:
      'A set is all four balls in the singles court: ball three aims at the target and need not meet it.',
    setup:
      'Target marker 9.00 m from the net, 1.50 m from the singles sideline, in the corner for the third ball.',
  },
  'deep-past-the-markers': {
    roles: ['Baseline', 'Baseline'],
    tasks: both('at the baseline, high and deep in your half, past the markers across the net'),
    feed: rally,
    counts: onTarget,
    setup:
      'Target markers 9.40 m from the net on both sides, in line with the centre line and on the singles sideline.',
  },
  'wide-past-the-markers': {
    roles: ['Baseline', 'Baseline'],
    tasks: both('at the baseline, cross-court between the markers and the sideline'),
    feed: rally,
    counts: onTarget,
    setup:
      'Target markers on the service lines and the baselines, 1.50 m from the singles sideline, where your cross-court lands.',
  },
  'inside-out-forehand': {
    roles: ['Baseline', 'Baseline'],
    tasks: both('runs round the backhand and hits the forehand into the partner’s ad corner'),
    feed: rally,
    counts:
      'Every forehand that bounces in the half diagonally opposite; a left-hander’s is a plain cross-court. The feed does not count.',
    setup: 'Recovery markers 0.50 m behind both baselines, 0.80 m from the centre mark.',
  },
  'short-ball-then-deep': {
    roles: ['Feeder', 'Mover'],
    tasks: [
      'plays ball one short and ball three high and deep, so that 2 has time',
      'steps in for ball two, turns, runs back and plays ball four; both deep',
    ],
    feed: drop,
    counts:
      'A set is all four balls in your half of the court, balls two and four behind the service line.',
    setup: 'Lane markers in line with the centre line, 9.00 m from the net on both sides.',
  },
  'drop-shot-and-chase': {
    roles: ['Chaser', 'Drop shot'],
    tasks: [
      'starts at the marker, runs for the drop shot, stops before the net and plays it long',
      'plays ball two as a drop shot that 1 can just reach',
    ],
    feed: drop,
    counts:
      'A set is all three balls in your half, the drop shot in front of the service line and reached before a second bounce.',
    setup:
      'Start markers 10.40 m from the net, 2.00 m from the centre line, for the chaser; start markers 9.60 m from the net, 2.00 m from the centre line, for the drop shot.',
  },
  'volley-to-volley': {
    roles: ['Net', 'Net'],
    tasks: both('at the net, every volley to the partner’s chest and no harder'),
    feed: atNet,
    counts: inTheAir,
    setup: 'Recovery markers 3.20 m from the net, 2.00 m from the centre line, on both sides.',
  },
  'soft-volleys': {
    roles: ['Net', 'Net'],
    tasks: both('close to the net, no swing, the ball just over the net'),
    feed: atNet,
    counts: inTheAir,
    setup: 'Recovery markers on the centre line, 2.40 m from the net, on both sides.',
  },
  'baseline-to-net': {
    roles: ['Baseline', 'Net'],
    tasks: [
      'at the baseline, every ball at chest height to 2',
      'at the net, every volley deep to 1',
    ],
    feed: fromBaseline,
    counts:
      'Every ball that goes on: 2 plays it in the air, 1 after one bounce in your half. The feed does not count.',
    setup: 'Recovery marker 3.20 m from the net, 2.00 m from the centre line, for the net player.',
  },
  'volleys-left-and-right': {
    roles: ['Baseline', 'Net'],
    tasks: [
      'runs from side to side and plays every ball back to 2',
      'at the net, volleys to one side and then to the other',
    ],
    feed: fromBaseline,
    counts:
      'Every ball that goes on: the volley changes sides each time and 1 can reach it. The feed does not count.',
    setup:
      'Recovery marker on the centre line, 3.20 m from the net; recovery marker 0.50 m behind the baseline, in line with the centre mark.',
  },
  'approach-pass-volley': {
    roles: ['Attacker', 'Passer'],
    tasks: [
      'starts at the marker: approach down the line, then volley into the open court',
      'at the baseline, plays ball two so that 1 can volley it',
    ],
    feed: drop,
    counts: 'A set is all three balls in the singles court, ball three in the air.',
    setup:
      'Start marker 8.20 m from the net, 2.00 m from the centre line; recovery marker 3.20 m from the net, 1.20 m from the centre line.',
  },
  'closing-in': {
    roles: ['Net', 'Net'],
    tasks: both(
      'starts at the service line, a step in after each volley, soft and at chest height',
    ),
    feed: '1 tosses a ball up and volleys it as ball one; after a miss, or a finished set, both go back to their service line.',
    counts: 'A set is six volleys in the air; a ball that bounces is a miss.',
    setup:
      'Start markers on both service lines, 2.00 m from the centre line; recovery markers 4.00 m from the net, 2.00 m from the centre line.',
  },
  'baseline-to-net-across': {
    roles: ['Baseline', 'Net'],
    tasks: [
      'in the deuce corner, every ball at chest height across to 2',
      'at the net on the diagonal, every volley deep across to 1',
    ],
    feed: fromBaseline,
    counts:
      'Every ball that goes on along the diagonal: 2 plays it in the air, 1 after one bounce. The feed does not count.',
    setup: 'Recovery marker 3.20 m from the net, 1.60 m from the centre line, for the net player.',
  },
  'half-volley-pick-up': {
    roles: ['Net', 'Pick-up'],
    tasks: [
      'at the net, volleys softly at 2’s feet, never at the body',
      'at the service line, picks the ball up within a step of its bounce and lifts it to 1',
    ],
    feed: '1 feeds every ball softly to 2’s feet, the first one and again after each miss.',
    counts:
      'Every ball that goes on: 2 plays it right after the bounce, 1 in the air. The feed does not count.',
    setup:
      'Recovery marker 3.20 m from the net, 2.00 m from the centre line, for the net player; start marker 6.60 m from the net, 2.00 m from the centre line, for the pick-up.',
  },
  'target-volleys': {
    roles: ['Baseline', 'Net'],
    tasks: [
      'at the baseline, plays ball one at chest height to 2',
      'at the net, volleys it past the markers',
    ],
    feed: drop,
    counts: 'A set only if the volley bounces in the target, lines included.',
    setup:
      'Recovery marker 3.20 m from the net, 2.00 m from the centre line, for the net player; target markers 8.60 m from the net, in line with the centre line and on the singles sideline.',
  },
  'lob-and-overhead': {
    roles: ['Lob', 'Overhead'],
    tasks: [
      'behind the baseline, lobs high and short enough to be smashed',
      'at the net, turns sideways, smashes under control back to 1',
    ],
    feed: lob,
    counts:
      'A set is a lob and its overhead, struck before the bounce and into the singles court; how hard does not matter.',
    setup:
      'Recovery marker on the centre line, 3.20 m from the net; start marker 1.00 m behind the baseline, in line with the centre mark.',
  },
  'volley-then-overhead': {
    roles: ['Baseline', 'Net'],
    tasks: [
      'at the baseline, first a ball at chest height, then a lob',
      'at the net, first a volley back to 1, then an overhead',
    ],
    feed: drop,
    counts: 'A set is all four balls in the singles court, both of 2’s in the air.',
    setup: 'Recovery marker on the centre line, 3.20 m from the net, for the net player.',
  },
  'all-the-way-in': {
    roles: ['Attacker', 'Defender'],
    tasks: [
      'starts at the marker: approach, volley, overhead',
      'at the baseline, first a ball that 1 can volley, then a lob',
    ],
    feed: drop,
    counts: 'A set is all five balls in the singles court, 1’s second and third in the air.',
    setup:
      'Start marker 8.20 m from the net, 2.00 m from the centre line; recovery marker on the centre line, 3.20 m from the net.',
  },
  'back-to-the-lobber': {
    roles: ['Lob', 'Overhead'],
    tasks: [
      'behind the baseline, lobs every ball',
      'at the net, smashes to 1’s side, so that 1 can lob again',
    ],
    feed: '1 drops a ball and lobs it, which is ball one; again after each miss, once 2 is back and looks up.',
    counts:
      'Every lob that is smashed and every overhead that is lobbed again; the target is the aim and no must.',
    setup:
      'Target marker 8.60 m from the net, 2.50 m from the singles sideline; recovery marker 3.20 m from the net, 1.20 m from the centre line.',
  },
  'let-it-bounce': {
    roles: ['Lob', 'Overhead'],
    tasks: [
      'behind the baseline, lobs very high and deep',
      'turns sideways, lets it bounce, gets behind it and strikes it overhead back to 1',
    ],
    feed: '1 drops a ball and lobs it, which is ball one; again after each miss, once 2 is back and looks up.',
    counts:
      'Every lob that comes down in the singles court and every overhead after one bounce that lands in it.',
    setup: 'Recovery marker on the centre line, 8.00 m from the net, for the overhead.',
  },
  'lob-and-follow': {
    roles: ['Lobber', 'Chaser'],
    tasks: [
      'lobs over 2, runs in to the marker and takes ball three overhead',
      'starts at the net, turns and runs after the lob, lets it bounce and lobs it back',
    ],
    feed: lob,
    counts:
      'A set is both lobs and the overhead in the singles court; only ball two is played after a bounce.',
    setup:
      'Start marker 3.20 m from the net, 1.00 m from the centre line; recovery marker on the centre line, 4.20 m from the net.',
  },
  'lobs-past-the-markers': {
    roles: ['Lob', 'Lob'],
    tasks: both(
      'behind the baseline, lobs every ball past the markers; one outside your half is let go',
    ),
    feed: rally,
    counts: onTarget,
    setup:
      'Target markers 8.60 m from the net on both sides, in line with the centre line and on the singles sideline.',
  },
  'target-overheads': {
    roles: ['Lob', 'Overhead'],
    tasks: [
      'behind the baseline in one corner, lobs to the middle and stays there',
      'at the net, turns sideways, smashes into the other corner',
    ],
    feed: lob,
    counts: 'A set only if the overhead bounces in the target, lines included.',
    setup:
      'Recovery marker on the centre line, 3.20 m from the net; target marker 8.00 m from the net, 2.50 m from the singles sideline, in the empty corner.',
  },
  'second-serve-deep-return': {
    roles: ['Server', 'Returner'],
    tasks: ['only second serves', 'returns deep down the middle'],
    feed: serve,
    counts:
      'Six balls are three serves and three returns. The return aims past the markers: anywhere in the singles court counts.',
    setup:
      'Target markers 7.40 m from the net, 2.00 m from the centre line to either side, for the deep return.',
  },
  'serve-return-next': {
    roles: ['Server', 'Returner'],
    tasks: ['serves, then plays the return into the open court', 'returns so that 1 can play on'],
    feed: serve,
    counts: 'A set is a serve in the box, the return and 1’s next ball in the singles court.',
    setup: 'Recovery markers 0.50 m behind both baselines, in line with the centre mark.',
  },
  'wide-serve-four-balls': {
    roles: ['Server', 'Returner'],
    tasks: [
      'serves wide, then plays into the open court',
      'returns cross-court, runs across and plays ball four cross-court',
    ],
    feed: 'Always from the ad side: the wide serve from the deuce side is a drill of its own. After a fault or a miss, 1 serves anew once 2 is ready.',
    counts:
      'A set is a serve in the box and three balls in the singles court: the serve aims at the target and need not meet it.',
    setup:
      'Target marker on the service line, 1.50 m from the singles sideline, in the box for the serve.',
  },
  'serves-to-the-middle': {
    roles: ['Server', 'Server'],
    tasks: both('serves down the middle once the partner looks and is ready'),
    feed: 'One ball a pair: the partner stops it with the racket after the bounce and serves it back. Begin on the deuce side, as drawn; change sides after four serves each.',
    counts: 'Each serve that bounces in its box and inside the marker, lines included.',
    setup:
      'Target markers on both service lines, 1.20 m from the centre line on either side, in all four boxes.',
  },
  'straight-serves': {
    roles: ['Server', 'Returner'],
    tasks: [
      'serves straight ahead at 70 per cent, for the rhythm alone',
      'returns gently straight back',
    ],
    feed: '1 serves once 2 is ready, and serves anew after each return or fault.',
    counts:
      'Serves and returns that land in your half, together ten; a serve may land anywhere in front of the service line there.',
    setup: 'Lane markers in line with the centre line, 9.00 m from the net on both sides.',
  },
  'serve-and-volley': {
    roles: ['Server', 'Returner'],
    tasks: ['serves, runs in, stops on balance and volleys deep', 'returns so that 1 can volley'],
    feed: oneSide('deuce', 'ad'),
    counts:
      'A set is a serve in the box, the return in the air to 1 and the volley in the singles court.',
    setup: 'Recovery marker on the service line, 0.60 m from the centre line, for the split step.',
  },
  'return-and-come-in': {
    roles: ['Server', 'Returner'],
    tasks: [
      'only second serves, then plays ball three so that 2 can volley it',
      'returns down the line, comes in to the marker and volleys into the open court',
    ],
    feed: oneSide('ad', 'deuce'),
    counts:
      'A set is a serve in the box and three balls in the singles court, ball four in the air.',
    setup: 'Recovery marker 3.20 m from the net, 1.40 m from the centre line, for the returner.',
  },
  'wide-serve-deuce-side': {
    roles: ['Server', 'Returner'],
    tasks: [
      'first serves, wide; then plays ball three into the open court',
      'returns so that 1 can play on, and recovers to the middle',
    ],
    feed: 'Always from the deuce side: the wide serve from the ad side is a drill of its own. After a fault or a miss, 1 serves another first serve once 2 is ready.',
    counts:
      'A set is a serve in the box and two balls in the singles court: the serve aims at the target and need not meet it.',
    setup:
      'Target marker on the service line, 1.50 m from the singles sideline, in the box for the serve.',
  },
};
