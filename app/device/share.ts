/**
 * What became of a file that was to be handed over: `shared` through the phone's own sheet, `closed`
 * where the person shut that sheet, `saved` as a download, or `text` where the phone does neither
 * and the person must be given the text to copy.
 */
export type Handed = 'shared' | 'closed' | 'saved' | 'text';

/**
 * Hands a file over by the best way that the phone has. Call it straight from a tap: the share
 * sheet opens for nothing else. `saved` says that the browser took the download; whether the phone
 * let it through, no page can know.
 */
export async function shareFile(file: File): Promise<Handed> {
  const data = { files: [file] };
  if (navigator.canShare?.(data)) {
    try {
      await navigator.share(data);
      return 'shared';
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return 'closed';
    }
  }
  return download(file) ? 'saved' : 'text';
}

/** A browser may begin to read the address well after the click. */
const READ_MS = 60_000;

function download(file: File): boolean {
  const link = document.createElement('a');
  if (!('download' in link)) return false;
  try {
    link.href = URL.createObjectURL(file);
    link.download = file.name;
    link.click();
  } catch {
    return false;
  }
  setTimeout(() => URL.revokeObjectURL(link.href), READ_MS);
  return true;
}

/** Puts a text on the phone's clipboard; false where the phone refuses. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
