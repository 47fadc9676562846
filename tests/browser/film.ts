import type { BrowserContext, Page } from 'playwright/test';

/** In place of a camera: a picture that the test draws. */
export const withCamera = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript(() => {
    const canvas = document.createElement('canvas');
    Object.assign(window, { camera: canvas });
    canvas.width = 640;
    canvas.height = 640;
    canvas.getContext('2d')?.fillRect(0, 0, 640, 640);
    Object.defineProperty(navigator, 'mediaDevices', {
      configurable: true,
      value: { getUserMedia: async () => canvas.captureStream() },
    });
  });

/** Shows a picture to the page's camera. */
export const see = (page: Page, png: Buffer): Promise<void> =>
  page.evaluate(async (base64) => {
    const { camera } = window as unknown as { camera: HTMLCanvasElement };
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const picture = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    camera.getContext('2d')?.drawImage(picture, 0, 0, camera.width, camera.height);
  }, png.toString('base64'));

/**
 * Holds one phone's camera before the other's screen until it says that all is there; of every three
 * pictures one is lost.
 *
 * @returns how many pictures it took, the lost ones too
 */
export async function film(from: Page, to: Page): Promise<number> {
  const arrived = to.getByRole('button', { name: 'Read another code' });
  let pictures = 0;
  while (!(await arrived.isVisible())) {
    const png = await from.locator('.code canvas').screenshot();
    pictures += 1;
    if (pictures % 3 !== 0) await see(to, png);
  }
  return pictures;
}
