import { afterEach, expect, test } from 'vitest';
import { mountElement, removeElements, sample } from './element-mount.ts';

afterEach(removeElements);

test('JSON.stringify writes the element as its file, in which nothing is lost', async () => {
  const element = await mountElement({ content: sample() });
  expect(element.toJSON()).toMatchObject({ format: 'elv-load-schedule', version: 2, ...sample() });
  expect(JSON.parse(JSON.stringify({ kept: element }))).toEqual({ kept: JSON.parse(element.value) as unknown });
});
