import type { StarterDrillId } from '../../core/drill/starter-drills.ts';
import type { DrillHead } from './drill-text.ts';

/** What is said of the starter drills wherever they come up, in English. */
export const drills: Record<StarterDrillId, DrillHead> = {
  'mini-rally': {
    name: 'Mini rally',
    intention:
      'Warm up eyes, feet and touch while three pairs keep short, low balls alive side by side.',
    cue: 'Slow swing, long finish.',
  },
  'cross-court-deuce': {
    name: 'Cross-court, deuce side',
    intention:
      'Own the safest line there is: over the low middle of the net and along the diagonal, where the court is longest.',
    cue: 'Aim high over the middle of the net.',
  },
  'cross-court-ad': {
    name: 'Cross-court, ad side',
    intention: 'Hold the ad diagonal until it feels like home and nobody can hurry you there.',
    cue: 'Turn your shoulders before the ball bounces.',
  },
  'half-court-rally': {
    name: 'Half-court rally',
    intention:
      'Keep a straight ball in your own half, so that down the line becomes a choice and not a gamble.',
    cue: 'Hit through the ball, towards your partner.',
  },
  'long-rally': {
    name: 'The long rally',
    intention: 'Learn patience by always playing one ball more than you planned.',
    cue: 'Breathe out as you hit.',
  },
  'crosses-and-lines': {
    name: 'Crosses and lines',
    intention:
      'Read the next ball early and cover the whole baseline, one of you playing cross-court and the other down the line.',
    cue: 'Push off as soon as your ball is gone.',
  },
  'slice-and-drive': {
    name: 'Slice and drive',
    intention:
      'Answer a low, skidding ball with a lifted one, and learn to change the pace of a rally.',
    cue: 'Bend your knees, not your back.',
  },
  'third-ball-down-the-line': {
    name: 'Third ball down the line',
    intention:
      'Change direction only on balance: two balls cross-court, the third down the line, the fourth cross-court again.',
    cue: 'Set your feet before you change direction.',
  },
  'deep-past-the-markers': {
    name: 'Deep past the markers',
    intention: 'Push your partner back with depth and height instead of force.',
    cue: 'Lift it: two rackets over the net.',
  },
  'wide-past-the-markers': {
    name: 'Wide past the markers',
    intention: 'Open the court with a cross-court angle that takes your partner past the sideline.',
    cue: 'Let the ball lean into the bend, like a bicycle.',
  },
  'inside-out-forehand': {
    name: 'Inside-out forehand',
    intention:
      'Make the forehand your answer from the backhand corner too, and hold the partner in the far corner with it.',
    cue: 'Small quick steps to get round the ball.',
  },
  'short-ball-then-deep': {
    name: 'Short ball, then deep',
    intention:
      'Step in to a short ball and play it deep, then be back in time for the next deep one.',
    cue: 'Meet the short ball in front of you.',
  },
  'drop-shot-and-chase': {
    name: 'Drop shot and chase',
    intention:
      'Play a drop shot out of the same swing as a deep ball, and learn to reach one at full stretch and under control.',
    cue: 'Look up early and run at once.',
  },
  'volley-to-volley': {
    name: 'Volley to volley',
    intention: 'Keep the ball in the air between two at the net, with quick feet and quiet hands.',
    cue: 'Hands in front, racket head up.',
  },
  'soft-volleys': {
    name: 'Soft volleys',
    intention: 'Take the speed off the ball, so that a touch volley is there when you need it.',
    cue: 'Soft fingers: catch the ball on the strings.',
  },
  'baseline-to-net': {
    name: 'Baseline to net',
    intention:
      'Block volley after volley back deep, while the partner at the baseline gives a ball that can be volleyed.',
    cue: 'Split step each time your partner hits.',
  },
  'volleys-left-and-right': {
    name: 'Volleys left and right',
    intention:
      'Steer the volley to one side and the other with your shoulders, and make your partner run without losing the ball.',
    cue: 'Turn your shoulders, then step across.',
  },
  'approach-pass-volley': {
    name: 'Approach, pass, volley',
    intention:
      'Come in behind a deep ball down the line, close the net and volley into the open court.',
    cue: 'Split step before the pass, then move.',
  },
  'closing-in': {
    name: 'Closing in',
    intention:
      'Win ground with every volley, from the service line towards the net, one step after each ball.',
    cue: 'Step in after each volley, never back.',
  },
  'baseline-to-net-across': {
    name: 'Baseline to net, across',
    intention:
      'Volley along the long diagonal, where the net is low, and learn to cover the angle from there.',
    cue: 'Show the strings to where the ball should go.',
  },
  'half-volley-pick-up': {
    name: 'Half-volley pick-up',
    intention:
      'Save the ball at your feet on the way in, so that a low ball does not send you back.',
    cue: 'Stay low until the ball is gone.',
  },
  'target-volleys': {
    name: 'Target volleys',
    intention:
      'Give the volley an aim: deep behind the markers, where the partner has to give ground.',
    cue: 'Finish with the strings towards the target.',
  },
  'lob-and-overhead': {
    name: 'Lob and overhead',
    intention:
      'Give a lob that is high but can be reached, and smash it under control back to the lobber.',
    cue: 'Turn side-on and point up at the ball.',
  },
  'volley-then-overhead': {
    name: 'Volley, then overhead',
    intention:
      'Be ready at the net for both answers, the low ball first and the high one right after.',
    cue: 'First step back with the racket-side foot.',
  },
  'all-the-way-in': {
    name: 'All the way in',
    intention:
      'Play a whole net attack in one go: approach, volley, answer the lob and close with an overhead.',
    cue: 'Stop on balance before every shot.',
  },
  'back-to-the-lobber': {
    name: 'Back to the lobber',
    intention:
      'Place the overhead where your partner can lob again, because control comes before power.',
    cue: 'Hit it at your highest reach.',
  },
  'let-it-bounce': {
    name: 'Let it bounce',
    intention: 'Judge a very high lob, get behind the bounce and still strike it over your head.',
    cue: 'Small steps until the ball comes down.',
  },
  'lob-and-follow': {
    name: 'Lob and follow',
    intention:
      'Turn defence into attack: lob over the net player, follow your ball in and take the answer out of the air.',
    cue: 'Open the racket face and finish high.',
  },
  'lobs-past-the-markers': {
    name: 'Lobs past the markers',
    intention: 'Send the lob so deep that nobody can attack it.',
    cue: 'Swing from low to high, finish over your head.',
  },
  'target-overheads': {
    name: 'Target overheads',
    intention: 'Place the overhead in the empty corner, because a well-placed one needs no force.',
    cue: 'Choose the corner before you swing.',
  },
  'second-serve-deep-return': {
    name: 'Second serve, deep return',
    intention:
      'Trust your second serve, and return it deep down the middle, where the server has no angle.',
    cue: 'Brush up the back of the ball.',
  },
  'serve-return-next': {
    name: 'Serve, return, next shot',
    intention:
      'Join up the three balls that most points begin with: serve, return and the server’s next shot.',
    cue: 'Be ready again as soon as you land.',
  },
  'wide-serve-four-balls': {
    name: 'Wide serve, four balls',
    intention:
      'Serve wide to open the court, then play into the space and hold the rally from there.',
    cue: 'Swing up at the ball, then out to the target.',
  },
  'serves-to-the-middle': {
    name: 'Serves to the middle',
    intention:
      'Serve down the middle, over the low part of the net, while your partner stops the ball and serves it back.',
    cue: 'The same toss every time, at full reach.',
  },
  'straight-serves': {
    name: 'Straight serves',
    intention:
      'Find an easy serving rhythm without a care for the aim, which is trained on the diagonal.',
    cue: 'Slow arm going up, fast arm at the ball.',
  },
  'serve-and-volley': {
    name: 'Serve and volley',
    intention:
      'Follow your serve to the service line, stop on balance and play the first volley deep.',
    cue: 'Land inside the court and keep moving in.',
  },
  'return-and-come-in': {
    name: 'Return and come in',
    intention: 'Take a second serve early, return down the line and follow your ball to the net.',
    cue: 'Short swing, weight going forward.',
  },
  'wide-serve-deuce-side': {
    name: 'Wide serve, deuce side',
    intention:
      'Pull the returner off the court with a wide first serve, then play into the space it has made.',
    cue: 'Toss a little more to the racket side.',
  },
};
