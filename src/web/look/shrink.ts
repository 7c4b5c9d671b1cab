// A photo made small before it is kept: at most 1,600 px on its longer side, drawn anew on a canvas and encoded from
// there. What a camera writes beside the picture, the place above all, is not drawn and so is gone.

/** Longer side of a kept photo, px. */
export const MOST_PX = 1600;
/** Of the encoder, 0 to 1. @practice a leaf still shows its veins */
const QUALITY = 0.8;

export interface Shrunk {
  readonly blob: Blob;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Draws a picture file anew, upright, small. Rejects where the browser cannot read it. */
export async function shrink(file: Blob): Promise<Shrunk> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const share = Math.min(1, MOST_PX / Math.max(picture.width, picture.height));
  const widthPx = Math.max(1, Math.round(picture.width * share));
  const heightPx = Math.max(1, Math.round(picture.height * share));
  const canvas = document.createElement('canvas');
  canvas.width = widthPx;
  canvas.height = heightPx;
  canvas.getContext('2d')?.drawImage(picture, 0, 0, widthPx, heightPx);
  picture.close();
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', QUALITY));
  if (blob === null) throw new Error('shrink: the browser made no picture of the canvas');
  return { blob, widthPx, heightPx };
}
