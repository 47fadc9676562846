/** A camera that looks for codes; `stop` lets it go. */
export interface Camera {
  stop(): void;
}

/** Why there is no camera: this phone, or this page, has none, or a person said no. */
export type NoCamera = 'none' | 'refused';

/** Pixels on the longer side that are looked at: a code of 85 modules has nine of them each. */
const LOOKED_AT = 800;

type Reader = (video: HTMLVideoElement) => Promise<string | undefined>;

interface Detector {
  detect(source: HTMLVideoElement): Promise<{ rawValue: string }[]>;
}
interface DetectorWindow {
  BarcodeDetector?: {
    new (options: { formats: string[] }): Detector;
    getSupportedFormats(): Promise<string[]>;
  };
}

/**
 * Shows the camera in a video and tells every code that comes into sight, again and again while it
 * is seen. One frame is looked at after the other, so a slow phone falls behind and never piles up.
 */
export async function readCodes(
  video: HTMLVideoElement,
  saw: (text: string) => void,
): Promise<Camera | NoCamera> {
  if (!navigator.mediaDevices?.getUserMedia) return 'none';
  let stream: MediaStream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({
      video: { facingMode: 'environment', width: { ideal: 1280 }, height: { ideal: 720 } },
    });
  } catch (error) {
    const name = error instanceof DOMException ? error.name : '';
    return name === 'NotFoundError' || name === 'OverconstrainedError' ? 'none' : 'refused';
  }
  let looking = true;
  const stop = () => {
    looking = false;
    for (const track of stream.getTracks()) track.stop();
    video.srcObject = null;
  };
  try {
    const read = await codeReader();
    video.srcObject = stream;
    await video.play();
    const look = async () => {
      if (!looking) return;
      const text = await read(video).catch(() => undefined);
      if (looking && text) saw(text);
      setTimeout(() => void look(), PAUSE_MS);
    };
    void look();
    return { stop };
  } catch {
    stop();
    return 'refused';
  }
}

/** Between two looks, so that a frame shown for a fifth of a second is seen more than once. */
const PAUSE_MS = 50;

/** The browser's own detector where it has one for these codes, else one that is loaded now. */
async function codeReader(): Promise<Reader> {
  const { BarcodeDetector } = window as unknown as DetectorWindow;
  const formats = await BarcodeDetector?.getSupportedFormats().catch((): string[] => []);
  if (BarcodeDetector && formats?.includes('qr_code')) {
    const detector = new BarcodeDetector({ formats: ['qr_code'] });
    return async (video) => (await detector.detect(video))[0]?.rawValue;
  }
  const { decodeQR } = await import('qr/decode.js');
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d', { willReadFrequently: true });
  return async (video) => {
    const { videoWidth, videoHeight } = video;
    if (!context || videoWidth === 0) return undefined;
    const scale = Math.min(1, LOOKED_AT / Math.max(videoWidth, videoHeight));
    canvas.width = Math.round(videoWidth * scale);
    canvas.height = Math.round(videoHeight * scale);
    context.drawImage(video, 0, 0, canvas.width, canvas.height);
    try {
      return decodeQR(context.getImageData(0, 0, canvas.width, canvas.height));
    } catch {
      return undefined; // No code is in sight.
    }
  };
}
