import { Notice } from '../parts/notice.tsx';
import { words } from '../words/words.ts';
import { demoState } from './demo.ts';

/** What became of loading or removing the demo, beside the button that asked for it. */
export function DemoState() {
  const state = demoState.value;
  if (!state) return null;
  return (
    <Notice as={state === 'coming' ? 'note' : 'fault'}>{words.value.demoStates[state]}</Notice>
  );
}
