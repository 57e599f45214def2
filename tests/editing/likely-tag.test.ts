import { expect, test } from 'vitest';
import { likelyTag } from '../../src/editing/likely-tag.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';

const { document } = new LoadSchedule({
  details: {},
  sheets: {
    types: [{ type: 'Downlight 7 W', aliases: 'spot; DL7' }, { type: 'PIR detector, ceiling' }, { type: 'Blind motor' }],
    runs: [{ run: 'L1-R1' }, { run: 'L1-R10' }, { run: 'l1-r10' }],
  },
});

test.each([
  ['Downligt', 'Downlight 7 W'], ['downlight 7w', 'Downlight 7 W'], ['SPOT', 'Downlight 7 W'], ['PIR', 'PIR detector, ceiling'],
  ['Socket', undefined],
])('whoever typed %s probably meant the type %s', (typed, meant) => {
  expect(likelyTag(document, 'types', typed)).toBe(meant);
});

test.each([['l1 r01', 'L1-R1'], ['L1R1', 'L1-R1'], ['L1-R2', undefined], ['L1 R10', undefined]])(
  'whoever typed %s probably meant the run %s', (typed, meant) => {
    expect(likelyTag(document, 'runs', typed)).toBe(meant);
  });
