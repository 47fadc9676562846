import { roundRuns } from '../actions.ts';
import { prefs } from '../device/prefs.ts';
import { newVersion, takeNewVersion } from '../device/worker.ts';
import { damaged, unsaved } from '../ledger.ts';
import { removeDemo } from '../settings/demo.ts';
import { DemoState } from '../settings/demo-state.tsx';
import { words } from '../words/words.ts';
import { Button } from './button.tsx';
import { damagedPlaceNames } from './damaged-places.ts';
import { Notice } from './notice.tsx';
import { Trouble } from './trouble.tsx';

/** What the app has to say of itself, at the top of a page. */
export function Messages() {
  const t = words.value;
  return (
    <>
      <Trouble />
      {damaged.value.length > 0 && (
        <Notice>{t.damaged(damaged.value.length, damagedPlaceNames())}</Notice>
      )}
      {newVersion.value && unsaved.value.size === 0 && !roundRuns() && (
        <Notice>
          {t.newVersion} <Button onClick={takeNewVersion}>{t.takeNewVersion}</Button>
        </Notice>
      )}
      {prefs.value.demo && (
        <>
          <Notice>
            <div class="notice-row">
              <span>{t.demoBanner}</span>
              <Button as="quiet" onClick={removeDemo}>
                {t.removeDemo}
              </Button>
            </div>
          </Notice>
          <DemoState />
        </>
      )}
    </>
  );
}
