// Bytes as they are put together and read, for the forms of pictures and for lines.

/** Parts one after the other. */
export function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((size, { length }) => size + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Whether plain letters stand at a place. */
export function reads(bytes: Uint8Array, at: number, letters: string): boolean {
  if (at + letters.length > bytes.length) return false;
  for (let i = 0; i < letters.length; i++) if (bytes[at + i] !== letters.charCodeAt(i)) return false;
  return true;
}

/** Numbers of several bytes, read from bytes. */
export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}
