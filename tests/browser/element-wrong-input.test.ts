import { afterEach, expect, test, vi } from 'vitest';
import { ElvInputError } from '../../components/load-schedule/index.ts';
import { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { fileOf, one, qtyOf } from './draft-support.ts';
import { mountElement, removeElements, textOf } from './element-mount.ts';

afterEach(() => {
  removeElements();
  vi.restoreAllMocks();
});

type Wrong = readonly [
  member: string, given: unknown, give: (element: LoadScheduleElement, given: never) => unknown, sentence: string,
];

const set = (name: 'value' | 'schedule' | 'src') =>
  (element: LoadScheduleElement, given: never) => { element[name] = given; };
const open = (element: LoadScheduleElement, given: never) => element.openFile(given);
const csv = (element: LoadScheduleElement, given: never) => element.importCsv(given);

const VALUE = 'It takes the text of a schedule file. Nothing has changed.';
const SCHEDULE = 'It takes a LoadSchedule. Nothing has changed.';
const SRC = 'It takes the address of a schedule file as a text, or null. Nothing has changed.';
const FILE = 'It takes a File, or an object with the texts “name” and “text”. Nothing has changed.';
const CSV = 'It takes CSV as a text. Nothing has changed.';
const SHEETS = 'devices, types, supplies, ways, branches, runs, conductors, modules, outputs, contacts, feeds, enclosures, '
  + 'terminals, cases, factors';

const WRONG: readonly Wrong[] = [
  ['value', null, set('value'), `“value” was given null. ${VALUE}`],
  ['value', undefined, set('value'), `“value” was given undefined. ${VALUE}`],
  ['value', 7, set('value'), `“value” was given 7. ${VALUE}`],
  ['value', {}, set('value'), `“value” was given Object. ${VALUE}`],
  ['schedule', null, set('schedule'), `“schedule” was given null. ${SCHEDULE}`],
  ['schedule', 7, set('schedule'), `“schedule” was given 7. ${SCHEDULE}`],
  ['schedule', one(1), set('schedule'), `“schedule” was given Object. ${SCHEDULE}`],
  [
    'schedule', fileOf(1).slice(0, 10), set('schedule'),
    `“schedule” was given "${fileOf(1).slice(0, 10)}". ${SCHEDULE}`,
  ],
  ['src', 7, set('src'), `“src” was given 7. ${SRC}`],
  ['src', {}, set('src'), `“src” was given Object. ${SRC}`],
  ['src', Symbol('s'), set('src'), `“src” was given Symbol(s). ${SRC}`],
  ['openFile', null, open, `“openFile” was given null. ${FILE}`],
  ['openFile', 7, open, `“openFile” was given 7. ${FILE}`],
  ['openFile', {}, open, `“openFile” was given Object. ${FILE}`],
  ['openFile', { name: 'a.json' }, open, `“openFile” was given Object. ${FILE}`],
  ['openFile', new Blob(['{}']), open, `“openFile” was given Blob. ${FILE}`],
  ['importCsv', null, csv, `“importCsv” was given null. ${CSV}`],
  ['importCsv', 7, csv, `“importCsv” was given 7. ${CSV}`],
  ['importCsv', {}, csv, `“importCsv” was given Object. ${CSV}`],
  ['importCsv', 'cables', (element, given) => element.importCsv('Ref;Qty\nD1;2\n', given),
    `“importCsv” was given "cables" as a sheet. There are ${SHEETS}. Nothing has changed.`],
  ['importCsv', 'merge', (element, given) => element.importCsv('Ref;Qty\nD1;2\n', 'devices', given),
    '“importCsv” was given "merge" as a way to take rows. There are update, append, replace. Nothing has changed.'],
  ['exportCsv', null, (element, given) => element.exportCsv(given),
    `“exportCsv” was given null as a sheet. There are ${SHEETS}. Nothing has changed.`],
  ['select', 7, (element, given) => element.select(given, 1, 'qty'),
    `“select” was given 7 as a sheet. There are ${SHEETS}. Nothing has changed.`],
];

test.each(WRONG)('“%s” refuses %s with a sentence', async (member, given, give, sentence) => {
  const element = await mountElement({ content: one(1), key: null });
  const before = element.value;
  const answer = new Promise((resolve) => { resolve(give(element, given as never)); });
  const error: unknown = await answer.then(() => 'nothing was thrown', (thrown: unknown) => thrown);
  expect(error).toBeInstanceOf(ElvInputError);
  expect(error).toMatchObject({ name: 'ElvInputError', member, message: sentence });
  await element.updateComplete;
  expect([element.value, element.src, element.validationMessage, element.schedule.undoLabel])
    .toEqual([before, null, '', undefined]);
});

test('an address is taken as a URL too, and none as null or undefined', async () => {
  const element = await mountElement({ content: one(1), key: null });
  const address = new URL(URL.createObjectURL(new Blob([fileOf(3)])));
  element.src = address as never;
  expect(element.src).toBe(address.href);
  await expect.poll(() => qtyOf(element)).toBe(3);
  element.src = undefined as never;
  expect(element.src).toBeNull();
});

let tags = 0;
/** An element that stood on the page, with a property, before its tag was defined. */
async function upgraded(property: object): Promise<LoadScheduleElement> {
  const tag = `elv-load-schedule-${tags += 1}`;
  const element = Object.assign(document.createElement(tag), property);
  document.body.append(element);
  await LoadScheduleElement.define(tag);
  return element as Element as LoadScheduleElement;
}

test('what was set before the element was defined is taken over', async () => {
  const given: readonly object[] = [
    { schedule: new LoadSchedule(one(4)) }, { value: fileOf(4) }, { src: URL.createObjectURL(new Blob([fileOf(4)])) },
  ];
  for (const property of given) {
    const element = await upgraded(property);
    await expect.poll(() => qtyOf(element), { message: Object.keys(property)[0]! }).toBe(4);
    expect(Object.keys(element)).not.toContain(Object.keys(property)[0]);
    element.remove();
  }
});

test.each([
  ['schedule', 7, `“schedule” was given 7. ${SCHEDULE}`], ['schedule', null, `“schedule” was given null. ${SCHEDULE}`],
  ['value', {}, `“value” was given Object. ${VALUE}`], ['src', {}, `“src” was given Object. ${SRC}`],
])('a wrong “%s” that was set before is reported and shown, and the element works', async (name, given, sentence) => {
  const reported = vi.spyOn(globalThis, 'reportError').mockImplementation(() => undefined);
  const element = await upgraded({ [name]: given });
  await element.updateComplete;
  expect(reported.mock.calls.map(([error]) => (error as Error).message)).toEqual([sentence]);
  expect(textOf(element, '.problems h3')).toBe(sentence);
  element.value = fileOf(5);
  expect(qtyOf(element)).toBe(5);
  element.remove();
});
