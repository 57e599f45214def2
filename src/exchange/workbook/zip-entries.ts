/** A file within a package, as it is kept there. */
export interface ZipEntry {
  readonly name: string;
  /** 0 where it is kept as it is, 8 where it is deflated. */
  readonly method: number;
  readonly packed: Uint8Array;
}

const DIRECTORY_END = 0x06054b50;
const DIRECTORY_ENTRY = 0x02014b50;
/** Stands for a number that is kept among the extra fields, as it may be large. */
const ELSEWHERE = 0xffffffff;
/** Bytes of the end of the directory, and of the longest comment behind it. */
const [END_SIZE, MOST_COMMENT] = [22, 0xffff];

/**
 * The files of a package in ZIP, by its directory; nothing is unpacked, and no size that it states is relied on.
 * Source: the field layout of ISO/IEC 21320-1 and of the ZIP file format specification that it names, from memory.
 * @throws RangeError for a package that is cut off or damaged.
 */
export function zipEntries(bytes: Uint8Array): ZipEntry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let end = bytes.length - END_SIZE;
  while (view.getUint32(end, true) !== DIRECTORY_END) {
    end -= 1;
    if (bytes.length - end > END_SIZE + MOST_COMMENT) throw new RangeError('it has no directory');
  }
  const entries: ZipEntry[] = [];
  for (let at = view.getUint32(end + 16, true); at < end && view.getUint32(at, true) === DIRECTORY_ENTRY;) {
    const [nameSize, extraSize, commentSize] = [28, 30, 32]
      .map((offset) => view.getUint16(at + offset, true)) as [number, number, number];
    const [packedSize, place] = sizeAndPlace(view, at, at + 46 + nameSize, extraSize);
    // The header before the file repeats the name, and has extra fields of its own.
    const start = place + 30 + view.getUint16(place + 26, true) + view.getUint16(place + 28, true);
    if (start + packedSize > bytes.length) throw new RangeError('a part of it is cut off');
    entries.push({
      name: new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameSize)),
      method: view.getUint16(at + 10, true),
      packed: bytes.subarray(start, start + packedSize),
    });
    at += 46 + nameSize + extraSize + commentSize;
  }
  return entries;
}

function sizeAndPlace(
  view: DataView, at: number, extraStart: number, extraSize: number,
): [packedSize: number, place: number] {
  const short = [24, 20, 42].map((offset) => view.getUint32(at + offset, true));
  for (let field = extraStart; field < extraStart + extraSize; field += 4 + view.getUint16(field + 2, true)) {
    if (view.getUint16(field, true) !== 1) continue;
    let long = field + 4;
    short.forEach((number, index) => {
      if (number !== ELSEWHERE) return;
      short[index] = Number(view.getBigUint64(long, true));
      long += 8;
    });
  }
  return [short[1]!, short[2]!];
}
