import { focusText } from '../words/focus-text.ts';
import { qualityWords } from '../words/quality-words.ts';

/** Inside a list of facts: what yes looks like, and how the player is told. */
export function FocusLines({ focus }: { focus: string }) {
  const t = qualityWords.value.focus;
  const { yes, told } = focusText(focus);
  return (
    <>
      {yes && (
        <>
          <dt>{t.yes}</dt>
          <dd>{yes}</dd>
        </>
      )}
      {told && (
        <>
          <dt>{t.told}</dt>
          <dd>{told}</dd>
        </>
      )}
    </>
  );
}
