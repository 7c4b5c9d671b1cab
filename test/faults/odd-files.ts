// Files that are no whole, true file of a record, or look as if they were none: what somebody may choose by mistake, what a
// download may leave, what somebody may have written to do harm. Each says where and why it is to be refused, or that it is to
// be taken in whole. They are made of one good file of three entries and a photo, beside a store that holds something already.

import type { Kept } from '#journal/entry.ts';
import { MOST_LINE_SIGNS } from '#journal/line-text.ts';
import { exportLines, MOST_FILE_LINE_SIGNS } from '#journal/lines.ts';
import { lineOfPhoto } from '#store/photos.ts';
import type { Photo } from '#store/store.ts';
import { exifSegment, jpegOf, pngOf } from '../scenarios/pictures.ts';
import { kg, recorder } from '../scenarios/recorder.ts';

const rake = recorder();
const weighed = (name: string) => rake.did('scraps.weighed', '2026-06-01', { name, mass: kg(2) });

/** What the store holds before: an entry and a photo. */
export const here: { readonly entry: Kept; readonly photo: Photo } = {
  entry: weighed('here'),
  photo: { id: weighed('photo').id, type: 'image/png', bytes: pngOf() },
};
const entries = ['leaves', 'peel, été', 'weeds'].map(weighed);
const photo = lineOfPhoto({ id: entries[0]?.id ?? '', type: 'image/jpeg', bytes: jpegOf({ size: 60 }) });

export const goodFile = exportLines(entries, [photo]);
const [header = '', ...rest] = goodFile.trimEnd().split('\n');
const [leaves = '', peel = '', weeds = '', photoLine = ''] = rest;
const file = (...lines: readonly string[]) => `${lines.join('\n')}\n`;
const headed = (from: string, to: string) => file(header.replace(from, to), ...rest);
/** The good file with another first entry. */
const withEntry = (line: string) => file(header, line, peel, weeds, photoLine);
const changed = (from: string, to: string) => withEntry(leaves.replace(from, to));
const withPhoto = (more: object) => file(header, leaves, peel, weeds, JSON.stringify({ ...photo, ...more }));
const strange = (field: string) => leaves.replace('scraps.weighed', 'moon.watched').replace('"massKg":2', field);
const deep = `"massKg":${'['.repeat(100_000)}${']'.repeat(100_000)}`;
const utf16 = (text: string, isLittle: boolean) => {
  const bytes = new Uint8Array(text.length * 2);
  const view = new DataView(bytes.buffer);
  for (let i = 0; i < text.length; i++) view.setUint16(i * 2, text.charCodeAt(i), isLittle);
  return bytes;
};
const bytes = (...parts: readonly (string | readonly number[])[]) =>
  new Blob(parts.map((part) => (typeof part === 'string' ? part : Uint8Array.from(part))));

export interface OddFile {
  readonly name: string;
  readonly file: string | Uint8Array<ArrayBuffer> | Blob;
  /** The first line to be refused, with what is said of it; absent where the file is to be taken in whole. */
  readonly refused?: readonly [line: number, said: RegExp];
}

const no = (name: string, file: OddFile['file'], line: number, said: RegExp): OddFile => ({
  name,
  file,
  refused: [line, said],
});
const yes = (name: string, file: OddFile['file']): OddFile => ({ name, file });

export const oddFiles: readonly OddFile[] = [
  no('nothing', '', 1, /header is missing/),
  no('line ends alone', '\n\n\r\n', 1, /header is missing/),
  no('spaces alone', '     ', 1, /header is missing/),
  no('a byte order mark alone', '\uFEFF', 1, /header is missing/),
  no('no header', file(...rest), 1, /format is missing/),
  no('the header at the end', file(...rest, header), 1, /format is missing/),
  no('the header twice', file(header, header, ...rest), 2, /id is missing/),
  no('a header of another format', headed('tilthwright-journal', 'other'), 1, /is not the format/),
  no('a header of a newer version', headed('"v":1', '"v":2'), 1, /v is too large/),
  no('a header with a field twice', headed('"count":3', '"count":9,"count":3'), 1, /count stands twice/),
  no('a header that is a list', file('[1]', ...rest), 1, /is no header|is missing/),
  no('a header that is nothing', file('null', ...rest), 1, /is no header|is missing/),
  no('more entries promised', headed('"count":3', '"count":4'), 1, /the file was cut/),
  no('fewer entries promised', headed('"count":3', '"count":2'), 1, /is less than/),
  no('more photos promised', headed('"photos":1', '"photos":2'), 1, /the file was cut/),
  no('a count below nothing', headed('"count":3', '"count":-3'), 1, /count is too small/),
  no('cut after an entry', file(header, leaves, peel), 1, /the file was cut/),
  no('cut in the middle of an entry', `${file(header, leaves)}${peel.slice(0, -9)}`, 3, /is no JSON/),
  no('cut in the middle of a photo', goodFile.slice(0, -30), 5, /is no JSON/),
  no('two files, one behind the other', goodFile + goodFile, 6, /id is missing/),
  no('a carriage return for each line end', goodFile.replaceAll('\n', '\r'), 1, /is no JSON/),
  no('UTF-16 with its mark', utf16(`\uFEFF${goodFile}`, true), 1, /is no text in UTF-8/),
  no('UTF-16 without a mark', utf16(goodFile, false), 1, /is no JSON/),
  no('Latin letters of one byte', bytes(file(header, leaves), peel.split('é')[0] ?? '', [0xe9], '"}\n'), 3, /UTF-8/),
  no('a byte that is no letter', bytes(file(header, leaves), [0xff], file(peel)), 3, /UTF-8/),
  no('bytes of nothing behind the end', bytes(goodFile, [0, 0, 0, 0]), 6, /is no JSON/),
  no('a packed file', bytes([0x1f, 0x8b, 8, 0, 0, 0, 0, 0, 0, 3]), 1, /UTF-8/),
  no('a picture', new Blob([new Uint8Array(pngOf())]), 1, /UTF-8/),
  no('the page of a network portal', '<!doctype html>\n<title>Sign in</title>\n', 1, /is no JSON/),
  no('a table', 'id,plot,by\n1,p,Rake\n', 1, /is no JSON/),
  no(
    'a list of entries',
    JSON.stringify(
      rest.map((line) => JSON.parse(line)),
      undefined,
      2,
    ),
    1,
    /is no JSON/,
  ),
  no('one value alone', '42', 1, /is no header|is missing/),
  no('a line longer than any may be', withEntry(`"${'x'.repeat(MOST_FILE_LINE_SIGNS)}"`), 2, /line is too long/),
  no('an entry longer than any may be', changed('leaves', 'x'.repeat(MOST_LINE_SIGNS)), 2, /line is too long/),
  no('a line to be sealed, too long', withEntry(strange(`"a":"${'x'.repeat(MOST_LINE_SIGNS)}"`)), 2, /is too long/),
  no('a note of a megabyte', changed('"massKg":2', `"massKg":2},"note":{"a":"${'x'.repeat(1e6)}"`), 2, /note/),
  no('nested 100,000 deep', changed('"massKg":2', deep), 2, /massKg is not a number/),
  no('a field twice', changed('"massKg":2', '"massKg":20,"massKg":2'), 2, /massKg stands twice/),
  no('a field twice around the body', changed('"on":', '"on":"2026-06-09","on":'), 2, /on stands twice/),
  no('a field twice, written otherwise', changed('"massKg":2', '"mass\\u004bg":20,"massKg":2'), 2, /stands twice/),
  no('a field twice in a line to be sealed', withEntry(strange('"a":1,"a":2')), 2, /a stands twice/),
  no('a prototype in the body', changed('"massKg":2', '"massKg":2,"__proto__":{"massKg":9}'), 2, /__proto__/),
  no('a constructor in the body', changed('"massKg":2', '"massKg":2,"constructor":{}'), 2, /constructor/),
  no('a number beyond all', changed('"massKg":2', '"massKg":1e999'), 2, /massKg is (too large|not a number)/),
  no('a number below nothing', changed('"massKg":2', '"massKg":-2'), 2, /massKg must be more than 0/),
  no('no number', changed('"massKg":2', '"massKg":NaN'), 2, /is no JSON/),
  no('a number in quotes', changed('"massKg":2', '"massKg":"2"'), 2, /massKg is not a number/),
  no('a comma too many', changed('"massKg":2', '"massKg":2,'), 2, /is no JSON/),
  no('a comment', withEntry(`${leaves} // weighed`), 2, /is no JSON/),
  no('two entries on a line', withEntry(`${leaves}${leaves}`), 2, /is no JSON/),
  no('a version of no kind', changed('"v":1', '"v":1.5'), 2, /v is not a whole number/),
  no('an id in capitals', changed(entries[0]?.id ?? '', (entries[0]?.id ?? '').toUpperCase()), 2, /id is not an id/),
  no('a path for an id', changed(entries[0]?.id ?? '', '../../etc/passwd'), 2, /id is not an id/),
  no('a date that is none', changed('2026-06-01', '2026-02-30'), 2, /on is not a date/),
  no('an instant without its zone', withEntry(leaves.replace(/Z"/, '"')), 2, /at is not an instant/),
  no(
    'one id with two contents',
    file(headed('"count":3', '"count":4').trimEnd(), leaves.replace('leaves', 'x')),
    6,
    /stands here already/,
  ),
  no(
    'an id that stands here with another content',
    withEntry(JSON.stringify({ ...here.entry, on: '2026-06-09' })),
    2,
    /stands here already/,
  ),
  no('a photo whose id stands here with another picture', withPhoto({ photo: here.photo.id }), 5, /another picture/),
  no('a photo of half its bytes', withPhoto({ base64: photo.base64.slice(0, 40) }), 5, /is no whole picture/),
  no('a photo that is a script', withPhoto({ base64: btoa('<script>alert(1)</script>') }), 5, /is no whole picture/),
  no('a photo of another type', withPhoto({ type: 'image/png' }), 5, /is no whole picture/),
  no('a photo of a type that runs', withPhoto({ type: 'image/svg+xml' }), 5, /type is not one of/),
  no(
    'a photo in other letters',
    withPhoto({ base64: photo.base64.replaceAll(/[+/]/g, '_') }),
    5,
    /is not whole base64/,
  ),
  no('a photo with more beside it', withPhoto({ place: '51.4779N' }), 5, /place/),
  no(
    'two pictures under one id',
    file(
      headed('"photos":1', '"photos":2').trimEnd(),
      JSON.stringify({ ...photo, ...lineOfPhoto({ ...here.photo, id: photo.photo }) }),
    ),
    6,
    /another picture/,
  ),
  yes('with a byte order mark', `\uFEFF${goodFile}`),
  yes('with carriage returns', goodFile.replaceAll('\n', '\r\n')),
  yes('with empty lines', goodFile.replaceAll('\n', '\n\n')),
  yes('without its last line end', goodFile.trimEnd()),
  yes('with the photo first', file(header, photoLine, leaves, peel, weeds)),
  yes(
    'with fields in another order',
    withEntry(JSON.stringify(Object.fromEntries(Object.entries(JSON.parse(leaves)).reverse()))),
  ),
  yes('with an entry of an unknown kind', withEntry(strange('"a":12345678901234567890'))),
  yes('with an unknown kind nested 100,000 deep', withEntry(strange(deep))),
  yes('with a prototype around the body', withEntry(leaves.replace('{', '{"__proto__":{"id":1},'))),
  yes(
    'with the place in its photo',
    withPhoto(
      lineOfPhoto({ id: photo.photo, type: 'image/jpeg', bytes: jpegOf({ size: 60, beside: [exifSegment()] }) }),
    ),
  ),
];
