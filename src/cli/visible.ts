// What may reach a terminal or a pipe: text whose every sign shows. Controls can repaint a screen, direction marks turn
// a figure around, and signs without width hide; each is written as JSON writes it, such as \u202e.

/** Controls (C0, C1), format signs (direction, zero width, tags), line separators, and halves of a sign. */
const HIDDEN = /[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/gu;

/** One line with every hidden sign written out. */
export function visible(line: string): string {
  return line.replace(HIDDEN, (sign) =>
    Array.from({ length: sign.length }, (_, i) => `\\u${sign.charCodeAt(i).toString(16).padStart(4, '0')}`).join(''),
  );
}

/** A JSON text with the same signs written out: it reads as the same value. Its own line ends stay. */
export function visibleJson(text: string): string {
  return text.split('\n').map(visible).join('\n');
}
