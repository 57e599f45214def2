import { strFromU8, strToU8, Zip, ZipDeflate } from 'fflate';
import { expect, it } from 'vitest';
import { Unpacker } from '../../src/exchange/workbook/unpack.ts';
import { zipEntries } from '../../src/exchange/workbook/zip-entries.ts';

const textsIn = (bytes: Uint8Array) =>
  Object.fromEntries(zipEntries(bytes).map((entry) => [entry.name, strFromU8(new Unpacker().unpack(entry)!)]));

it('finds files whose sizes are known only behind them, as programs write that do not wait for the end', () => {
  const chunks: Uint8Array[] = [];
  const zip = new Zip((_, chunk) => { chunks.push(chunk); });
  for (const name of ['xl/a.xml', 'xl/ä.xml']) {
    const file = new ZipDeflate(name);
    zip.add(file);
    file.push(strToU8(`<${name}>`), true);
  }
  zip.end();
  expect(textsIn(Buffer.concat(chunks))).toEqual({ 'xl/a.xml': '<xl/a.xml>', 'xl/ä.xml': '<xl/ä.xml>' });
});

it('finds sizes and places that are kept among the extra fields', () => {
  // By hand: a header of 30 bytes, the name, 3 bytes; the directory with an unknown field of 2 bytes, then size, packed
  // size and place.
  const header = Buffer.alloc(30);
  header.writeUInt32LE(0x04034b50, 0);
  header.writeUInt16LE(1, 26);
  const entry = Buffer.alloc(46);
  entry.writeUInt32LE(0x02014b50, 0);
  entry.fill(0xff, 20, 28);
  entry.writeUInt16LE(1, 28);
  entry.writeUInt16LE(6 + 28, 30);
  entry.fill(0xff, 42, 46);
  const extra = Buffer.alloc(6 + 28);
  extra.set([0x55, 0x54, 2, 0, 9, 9, 1, 0, 24, 0]);
  extra.writeBigUInt64LE(3n, 10);
  extra.writeBigUInt64LE(3n, 18);
  extra.writeBigUInt64LE(0n, 26);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt32LE(34, 16);
  const bytes = Buffer.concat([header, Buffer.from('nabc'), entry, Buffer.from('n'), extra, end]);
  expect(textsIn(bytes)).toEqual({ n: 'abc' });
});

it('throws where a part is cut off or there is no directory', () => {
  expect(() => zipEntries(new Uint8Array(10))).toThrow(RangeError);
  expect(() => zipEntries(new Uint8Array(200_000))).toThrow('it has no directory');
});
