import type { DrillText } from '../../core/drill/drill.ts';
import type { StarterDrillId } from '../../core/drill/starter-drills.ts';

/** What people read of the starter drills, in English. The distances are those of the markers. */
export const drills: Record<StarterDrillId, DrillText & { setup: string }> = {
  'mini-rally': {
    name: 'Mini rally',
    intention:
      'Warm up eyes, feet and touch while four pairs keep short, low balls alive side by side.',
    cue: 'Slow swing, long finish.',
    roles: ['Rally', 'Rally'],
    setup:
      'Lane markers on both service lines, 2.74 m from the centre line, make room for four pairs.',
  },
  'cross-court-deuce': {
    name: 'Cross-court, deuce side',
    intention:
      'Own the safest line there is: over the low middle of the net and along the diagonal, where the court is longest.',
    cue: 'Aim high over the middle of the net.',
    roles: ['Baseline', 'Baseline'],
    setup:
      'Recovery markers 0.50 m behind both baselines, 0.60 m from the centre mark on the side you play from.',
  },
  'cross-court-ad': {
    name: 'Cross-court, ad side',
    intention: 'Hold the ad diagonal until it feels like home and nobody can hurry you there.',
    cue: 'Turn your shoulders before the ball bounces.',
    roles: ['Baseline', 'Baseline'],
    setup:
      'Recovery markers 0.50 m behind both baselines, 0.60 m from the centre mark on the side you play from.',
  },
  'half-court-rally': {
    name: 'Half-court rally',
    intention:
      'Keep a straight ball in your own half, so that down the line becomes a choice and not a gamble.',
    cue: 'Hit through the ball, towards your partner.',
    roles: ['Baseline', 'Baseline'],
    setup: 'Lane markers in line with the centre line, 9.00 m from the net on both sides.',
  },
  'long-rally': {
    name: 'The long rally',
    intention: 'Learn patience by always playing one ball more than you planned.',
    cue: 'Breathe out as you hit.',
    roles: ['Baseline', 'Baseline'],
    setup:
      'Lane markers 9.00 m from the net, 2.00 m from the centre line, on both sides, for a lane down the middle.',
  },
  'crosses-and-lines': {
    name: 'Crosses and lines',
    intention:
      'Read the next ball early and cover the whole baseline, one of you playing cross-court and the other down the line.',
    cue: 'Push off as soon as your ball is gone.',
    roles: ['Cross', 'Line'],
    setup: 'Recovery markers 0.50 m behind both baselines, in line with the centre mark.',
  },
  'slice-and-drive': {
    name: 'Slice and drive',
    intention:
      'Answer a low, skidding ball with a lifted one, and learn to change the pace of a rally.',
    cue: 'Bend your knees, not your back.',
    roles: ['Slice', 'Drive'],
    setup: 'Recovery markers 0.50 m behind both baselines, 2.00 m from the centre mark.',
  },
  'third-ball-down-the-line': {
    name: 'Third ball down the line',
    intention:
      'Change direction only on balance: two balls cross-court, the third down the line, the fourth cross-court again.',
    cue: 'Set your feet before you change direction.',
    roles: ['Line', 'Cross'],
    setup:
      'Target marker 9.00 m from the net, 1.50 m from the singles sideline, in the corner for the third ball.',
  },
  'deep-past-the-markers': {
    name: 'Deep past the markers',
    intention: 'Push your partner back with depth and height instead of force.',
    cue: 'Lift it: two rackets over the net.',
    roles: ['Baseline', 'Baseline'],
    setup:
      'Target markers 9.40 m from the net on both sides, in line with the centre line and on the singles sideline.',
  },
  'wide-past-the-markers': {
    name: 'Wide past the markers',
    intention: 'Open the court with a cross-court angle that takes your partner past the sideline.',
    cue: 'Brush the outside of the ball.',
    roles: ['Baseline', 'Baseline'],
    setup:
      'Target markers on the service lines and the baselines, 1.50 m from the singles sideline, where your cross-court lands.',
  },
  'volley-to-volley': {
    name: 'Volley to volley',
    intention: 'Keep the ball in the air between two at the net, with quick feet and quiet hands.',
    cue: 'Hands in front, racket head up.',
    roles: ['Net', 'Net'],
    setup: 'Recovery markers 3.20 m from the net, 2.00 m from the centre line, on both sides.',
  },
  'soft-volleys': {
    name: 'Soft volleys',
    intention: 'Take the speed off the ball, so that a touch volley is there when you need it.',
    cue: 'Soft fingers: catch the ball on the strings.',
    roles: ['Net', 'Net'],
    setup: 'Recovery markers 2.40 m from the net, 1.37 m from the centre line, on both sides.',
  },
  'baseline-to-net': {
    name: 'Baseline to net',
    intention:
      'Block volley after volley back deep, while the partner at the baseline gives a ball that can be volleyed.',
    cue: 'Split step each time your partner hits.',
    roles: ['Baseline', 'Net'],
    setup: 'Recovery marker 3.20 m from the net, 2.00 m from the centre line, for the net player.',
  },
  'volleys-left-and-right': {
    name: 'Volleys left and right',
    intention:
      'Steer the volley to one side and the other with your shoulders, and make your partner run without losing the ball.',
    cue: 'Turn your shoulders, then step across.',
    roles: ['Baseline', 'Net'],
    setup:
      'Recovery marker on the centre line, 3.20 m from the net; recovery marker 0.50 m behind the baseline, in line with the centre mark.',
  },
  'approach-pass-volley': {
    name: 'Approach, pass, volley',
    intention:
      'Come in behind a deep ball down the line, close the net and volley into the open court.',
    cue: 'Split step before the pass, then move.',
    roles: ['Attacker', 'Passer'],
    setup:
      'Start marker 8.20 m from the net, 2.00 m from the centre line; recovery marker 3.20 m from the net, 1.20 m from the centre line.',
  },
  'closing-in': {
    name: 'Closing in',
    intention:
      'Win ground with every volley, from the service line towards the net, one step after each ball.',
    cue: 'Step in after each volley, never back.',
    roles: ['Net', 'Net'],
    setup:
      'Start markers on both service lines, 2.00 m from the centre line; recovery markers 4.00 m from the net, 2.00 m from the centre line.',
  },
  'lob-and-overhead': {
    name: 'Lob and overhead',
    intention:
      'Give a lob that is high but can be reached, and smash it under control into the same half of the court.',
    cue: 'Turn side-on and point up at the ball.',
    roles: ['Lob', 'Overhead'],
    setup:
      'Recovery marker 3.20 m from the net, 2.00 m from the centre line; start marker 1.00 m behind the baseline, 2.00 m from the centre mark.',
  },
  'volley-then-overhead': {
    name: 'Volley, then overhead',
    intention:
      'Be ready at the net for both answers, the low ball first and the high one right after.',
    cue: 'First step back with the racket-side foot.',
    roles: ['Baseline', 'Net'],
    setup: 'Recovery marker 3.20 m from the net, 2.00 m from the centre line, for the net player.',
  },
  'all-the-way-in': {
    name: 'All the way in',
    intention:
      'Play a whole net attack in one go: approach, volley, answer the lob and close with an overhead.',
    cue: 'Stop on balance before every shot.',
    roles: ['Attacker', 'Defender'],
    setup:
      'Start marker 8.20 m from the net, 2.00 m from the centre line; recovery marker on the centre line, 3.20 m from the net.',
  },
  'back-to-the-lobber': {
    name: 'Back to the lobber',
    intention:
      'Place the overhead where your partner can lob again, because control comes before power.',
    cue: 'Hit it at your highest reach.',
    roles: ['Lob', 'Overhead'],
    setup:
      'Target marker 8.60 m from the net, 2.50 m from the singles sideline; recovery marker 3.20 m from the net, 1.20 m from the centre line.',
  },
  'let-it-bounce': {
    name: 'Let it bounce',
    intention: 'Judge a very high lob, get behind the bounce and still strike it over your head.',
    cue: 'Small steps until the ball comes down.',
    roles: ['Lob', 'Overhead'],
    setup: 'Recovery marker 8.00 m from the net, 2.00 m from the centre line, for the overhead.',
  },
  'lob-and-follow': {
    name: 'Lob and follow',
    intention:
      'Turn defence into attack: lob over the net player, follow your ball in and take the answer out of the air.',
    cue: 'Open the racket face and finish high.',
    roles: ['Lobber', 'Chaser'],
    setup:
      'Start marker 3.20 m from the net, 1.00 m from the centre line; recovery marker on the centre line, 4.20 m from the net.',
  },
  'lobs-past-the-markers': {
    name: 'Lobs past the markers',
    intention: 'Send the lob so deep that nobody can attack it.',
    cue: 'Swing from low to high, finish over your head.',
    roles: ['Lob', 'Lob'],
    setup:
      'Target markers 8.60 m from the net on both sides, in line with the centre line and on the singles sideline.',
  },
  'second-serve-deep-return': {
    name: 'Second serve, deep return',
    intention:
      'Trust your second serve, and return it deep down the middle, where the server has no angle.',
    cue: 'Brush up the back of the ball.',
    roles: ['Server', 'Returner'],
    setup:
      'Target markers 7.40 m from the net, 2.00 m from the centre line to either side, for the deep return.',
  },
  'serve-return-next': {
    name: 'Serve, return, next shot',
    intention:
      'Join up the three balls that most points begin with: serve, return and the server’s next shot.',
    cue: 'Be ready again as soon as you land.',
    roles: ['Server', 'Returner'],
    setup: 'Recovery markers 0.50 m behind both baselines, in line with the centre mark.',
  },
  'wide-serve-four-balls': {
    name: 'Wide serve, four balls',
    intention:
      'Serve wide to open the court, then play into the space and hold the rally from there.',
    cue: 'Swing up at the ball, then out to the target.',
    roles: ['Server', 'Returner'],
    setup:
      'Target marker on the service line, 1.50 m from the singles sideline, in the box for the serve.',
  },
  'serves-to-the-middle': {
    name: 'Serves to the middle',
    intention:
      'Serve down the middle, over the low part of the net, while your partner catches the ball and serves it back.',
    cue: 'The same toss every time, at full reach.',
    roles: ['Server', 'Server'],
    setup:
      'Target markers on both service lines, 1.20 m from the centre line, in the boxes you serve into.',
  },
  'straight-serves': {
    name: 'Straight serves',
    intention:
      'Serve many balls in an easy rhythm, straight ahead into your own half of the court.',
    cue: 'Slow arm going up, fast arm at the ball.',
    roles: ['Server', 'Returner'],
    setup: 'Lane markers in line with the centre line, 9.00 m from the net on both sides.',
  },
  'serve-and-volley': {
    name: 'Serve and volley',
    intention:
      'Follow your serve to the service line, stop on balance and play the first volley deep.',
    cue: 'Land inside the court and keep moving in.',
    roles: ['Server', 'Returner'],
    setup: 'Recovery marker on the service line, 0.60 m from the centre line, for the split step.',
  },
  'return-and-come-in': {
    name: 'Return and come in',
    intention: 'Take a second serve early, return down the line and follow your ball to the net.',
    cue: 'Short swing, weight going forward.',
    roles: ['Server', 'Returner'],
    setup: 'Recovery marker 3.20 m from the net, 1.40 m from the centre line, for the returner.',
  },
};
