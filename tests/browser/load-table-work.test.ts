import axe from 'axe-core';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { afterEach, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { LoadTable } from '../../components/load-table/load-table.ts';
import { readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import { letterOf } from '../../src/schedule/index.ts';
import { drop, dropFiles, mountElement, part, parts, removeElements, said, sample, textOf } from './element-mount.ts';
import { demoContent } from './support/demo-content.ts';
import { frameOf, open } from './support/load-table.ts';
import { savedFiles } from './support/saved-files.ts';
import { press } from './work-support.ts';

afterEach(() => {
  removeElements();
  vi.restoreAllMocks();
  localStorage.clear();
});

test.each(['html', 'xlsx'] as const)('what is saved as %s is opened again without loss', async (form) => {
  const content = {
    ...sample(), revisions: [{ revision: 'A', date: '2026-11-02', name: 'N. N.', text: 'First issue' }],
  };
  const element = await open(content);
  const files = savedFiles();
  await press(element, `[data-do=${form}]`);
  await expect.poll(() => files.length, { timeout: 10_000 }).toBe(1);
  expect(files[0]!.name).toBe(`KP-1-load-table.${form}`);
  const other = await mountElement();
  expect(await other.openFile(files[0]!)).toEqual([]);
  expect(other.value).toBe(writeSchedule(content));
  expect(other.schedule.undoLabel).toBe(`KP-1-load-table.${form} opened`);
});

test('a cell that was edited in the saved workbook is told, with what it is in the schedule, until that is put away',
  async () => {
  const element = await open(sample());
  const files = savedFiles();
  await press(element, '[data-do=xlsx]');
  await expect.poll(() => files.length, { timeout: 10_000 }).toBe(1);
  const packed = unzipSync(new Uint8Array(await files[0]!.arrayBuffer()));
  const [row] = element.schedule.rows('supplies');
  // The rating of the first supply, as it stands in its worksheet.
  const letter = letterOf('supplies', 'rated');
  const edited = Object.fromEntries(Object.entries(packed).map(([path, bytes]) => {
    const text = strFromU8(bytes);
    return [path, text.includes('>Rail<') && text.includes('>Rated (A)<')
      ? strToU8(text.replace(
        new RegExp(`(<c r="${letter}2"[^>]*><v>)[^<]*`), (_all, before: string) => `${before}77`
      )) : bytes];
  }));
  const other = await mountElement();
  const back = new File([zipSync(edited)], 'back.xlsx');
  expect(await other.openFile(back)).toEqual([]);
  expect(other.schedule.rows('supplies')[0]!.cells).toEqual(row!.cells);
  await other.updateComplete;
  expect(textOf(other, '.problems h3')).toMatch(/^back\.xlsx: the schedule that it carries is opened\./);
  expect(parts(other, '.problems li').map((line) => line.textContent)).toEqual([
    `Supplies, ${String(row!.cells.rail)}, Rated: ${Number(row!.cells.rated).toFixed(2)}\u00a0A in the schedule, 77.00\u00a0A on the worksheet.`,
  ]);
  part(other, '.problems button')!.click();
  await other.updateComplete;
  expect(parts(other, '.problems')).toEqual([]);
  // So they are where it is the older schedule that is compared with.
  await (part(element, 'elv-load-table') as LoadTable).compareWith(back);
  await press(element, '[data-view=changes]');
  expect(textOf(element, 'elv-load-table .problems')).toContain('77.00 A on the worksheet');
  // A person who opens it is offered the edit, with before and after, and takes it.
  const third = await mountElement();
  dropFiles(third, back);
  await expect.poll(() => parts(third, 'elv-rows-offer tbody td').map(({ textContent }) => textContent.trim()))
    .toEqual(['', String(row!.cells.rail), 'Rated', `${Number(row!.cells.rated).toFixed(2)}\u00a0A`, '77.00\u00a0A']);
  expect(textOf(third, 'elv-rows-offer h4')).toBe('Supplies: 1 changed, 0 new');
  expect(parts(third, '.problems')).toEqual([]);
  expect(third.schedule.rows('supplies')[0]!.cells).toEqual(row!.cells);
  part(third, 'elv-rows-offer [data-do=take]')!.click();
  await expect.poll(() => third.schedule.rows('supplies')[0]!.cells).toEqual({ ...row!.cells, rated: 77 });
});

test('a figure that was typed over in a saved page is told with its place when the page is opened', async () => {
  const element = await open(sample());
  const files = savedFiles();
  await press(element, '[data-do=html]');
  await expect.poll(() => files.length).toBe(1);
  const page = await files[0]!.text();
  const other = await mountElement();
  expect(await other.openFile(new File([page], 'issued.html'))).toEqual([]);
  await other.updateComplete;
  expect(parts(other, '.problems')).toEqual([]);
  const changed = page.replace(/(<section id="supplies"[\s\S]*?<td class="number[^"]*">)[^<]+/, '$1777');
  expect(changed).not.toBe(page);
  expect(await other.openFile(new File([changed], 'received.html'))).toEqual([]);
  await expect.poll(() => textOf(other, '.problems h3')).toMatch(/^received\.html: the schedule that it carries is opened\./);
  expect(parts(other, '.problems li').map((each) => each.textContent).join('')).toContain('777');
});

test('in German all of it is German, and in English again when the page becomes English', async () => {
  const element = await open(
    { ...sample(), revisions: [{ revision: 'A', date: '2026-11-02', name: 'N. N.', text: 'x' }] }, { lang: 'de' }
  );
  const page = () => frameOf(element).contentDocument!;
  await expect.poll(() => page().querySelector('h1')?.textContent).toBe('Übergabedokument');
  expect(page().documentElement.lang).toBe('de');
  expect(page().title).toBe('Übergabedokument');
  expect(textOf(element, 'elv-load-table h2')).toBe('Übergabedokument');
  expect(parts(element, 'elv-load-table footer .save button').map((each) => each.textContent))
    .toEqual(['Als HTML speichern', 'Als XLSX speichern', 'Als CSV speichern']);
  const files = savedFiles();
  await press(element, '[data-do=csv]');
  expect(await files[0]!.text()).toMatch(/^\ufeff?Übergabedokument,Boat house – KP-1\r\n/);
  await press(element, '[data-view=revisions]');
  await press(element, '.revisions button');
  expect(element.schedule.undoLabel).toBe('Revision A entfernt');
  await press(element, '[data-view=preview]');
  element.lang = 'en';
  await expect.poll(() => page().querySelector('h1')?.textContent).toBe('Load table');
  expect(page().documentElement.lang).toBe('en');
});

test('the whole is saved as CSV', async () => {
  const element = await open(sample());
  const files = savedFiles();
  await press(element, '[data-do=csv]');
  expect(files.map(({ name }) => name)).toEqual(['KP-1-load-table.csv']);
  expect(await files[0]!.text()).toMatch(/^\ufeff?Load table,Boat house – KP-1\r\n/);
});

test('a workbook that holds no schedule is refused with a sentence, and nothing changes', async () => {
  const element = await mountElement({ content: sample() });
  const before = element.value;
  expect(await element.openFile(new File([new Uint8Array([0x50, 0x4b, 3, 4, 0, 0])], 'list.xlsx'))).toEqual([
    expect.objectContaining({ message: expect.stringMatching(/workbook/) as string })]);
  expect(element.value).toBe(before);
});

test('what is printed is the load table with every device, on the paper that was chosen, also from another view',
  async () => {
  const element = await open(demoContent());
  await press(element, '[data-view=revisions]');
  await userEvent.selectOptions(part(element, '[data-do=paper]')!, 'A3-portrait');
  const printed: { text: string; styles: string }[] = [];
  // The frame does not exist yet: every new one is given a print that looks at what it would print.
  const real = Object.getOwnPropertyDescriptor(HTMLIFrameElement.prototype, 'contentWindow')!;
  vi.spyOn(
    HTMLIFrameElement.prototype, 'contentWindow', 'get'
  ).mockImplementation(function contentWindow(this: HTMLIFrameElement) {
    const window = real.get!.call(this) as Window;
    window.print = () => {
      const [sheet] = window.document.adoptedStyleSheets;
      printed.push({
        text: window.document.body.innerText, styles: [...sheet!.cssRules].map(({ cssText }) => cssText).join('\n'),
      });
    };
    return window;
  });
  await press(element, '[data-do=print]');
  await expect.poll(() => printed.length).toBe(1);
  const words = new Set(printed[0]!.text.split(/\s+/));
  const refs = element.schedule.rows('devices').map(({ cells }) => cells.ref as string);
  expect(refs.length).toBeGreaterThan(140);
  expect(refs.filter((ref) => !words.has(ref))).toEqual([]);
  expect(printed[0]!.styles).toMatch(/@page\s*\{[^@]*size: (?:A3 portrait|portrait A3|A3)/i);
});

test('the preview follows the schedule, and its links stay in it', async () => {
  const element = await open(sample());
  await expect.poll(() => frameOf(element).contentDocument!.body.innerText).toContain('Boat house');
  element.schedule.act('Project changed', [{ op: 'details', details: { project: 'Lock house' } }]);
  await expect.poll(() => frameOf(element).contentDocument!.body.innerText).toContain('Lock house');
  const { contentDocument } = frameOf(element);
  // Otherwise tables would not have the size of type of the saved page.
  expect(contentDocument!.compatMode).toBe('CSS1Compat');
  const [link] = contentDocument!.links as HTMLCollectionOf<HTMLAnchorElement>;
  link!.click();
  await expect.poll(() => contentDocument!.location.hash).toBe(link!.hash);
  expect(frameOf(element).contentDocument).toBe(contentDocument);
});

test('number and client of the document are written in once, stand in the preview, and are undone', async () => {
  const element = await open(sample());
  await press(element, '[data-view=revisions]');
  await userEvent.fill(part(element, '.document [data-detail=documentNumber]')!, ' E-17 ');
  await userEvent.tab();
  await userEvent.keyboard('Harbour board{Enter}');
  const { document } = element.schedule;
  expect(document.details).toMatchObject({ documentNumber: 'E-17', client: 'Harbour board' });
  await press(element, '[data-view=preview]');
  await expect.poll(() => frameOf(element).contentDocument?.body.textContent).toMatch(/Client\s*Harbour board/);
  expect(element.undo()).toBe('Client changed');
  expect(element.undo()).toBe('Document no. changed');
  expect(document.details.documentNumber).toBeUndefined();
});

test('a revision is written in, and undone step by step', async () => {
  const element = await open({ ...sample(), details: { revision: 'B', date: '2026-11-20', preparedBy: 'N. N.' } });
  await press(element, '[data-view=revisions]');
  await press(element, '[data-do=addRevision]');
  const { document } = element.schedule;
  expect(document.revisions).toEqual([{ revision: 'B', date: '2026-11-20', name: 'N. N.', text: '' }]);
  await userEvent.fill(part(element, '.revisions [data-key=text]')!, 'Quay lights added');
  await userEvent.tab();
  expect(document.revisions[0]!.text).toBe('Quay lights added');
  expect(element.undo()).toBe('Revision B: what is different changed');
  await element.updateComplete;
  await expect.poll(() => (part(element, '.revisions [data-key=text]') as HTMLInputElement).value).toBe('');
  expect(element.undo()).toBe('Revision added');
  expect(document.revisions).toEqual([]);
});

test('nothing can be written in a read-only element, which may be saved and printed', async () => {
  const element =
    await open({ ...sample(), revisions: [{ revision: 'A', date: '', name: '', text: '' }] }, { readonly: '' });
  await press(element, '[data-view=revisions]');
  const fields = await vi.waitUntil(() => parts(element, '.revisions input') as HTMLInputElement[]);
  expect(fields.map((field) => field.readOnly)).toEqual([true, true, true, true]);
  expect((part(element, '[data-do=addRevision]') as HTMLButtonElement).disabled).toBe(true);
  expect((part(element, '[data-do=html]') as HTMLButtonElement).disabled).toBe(false);
});

test('a dropped older schedule is compared with, and its changes are a part of the load table', async () => {
  // By hand: L1 is asked for 1.16 A with six sensors of 0.1 A, for 1.06 A with five.
  const older = sample();
  const [lamp, sensor, ...others] = older.sheets.devices!;
  const text = writeSchedule(
    { ...older, sheets: { ...older.sheets, devices: [lamp!, { ...sensor!, qty: 5 }, ...others] } }
  );
  const element = await open(sample());
  const before = element.value;
  await press(element, '[data-view=changes]');
  drop(element, 'older.schedule.json', text);
  await expect.poll(() => textOf(element, 'elv-load-table .body')).toContain('older.schedule.json');
  const lines = parts(element, 'elv-load-table tbody tr')
    .map((row) => [...row.querySelectorAll('td')].map((cell) => cell.textContent.trim()));
  expect(lines).toContainEqual(['Devices', 'D2', 'changed', 'Qty 5 → 6']);
  expect(lines).toContainEqual(['Supplies', 'L1', 'Demand', '1.06\u00a0A', '1.16\u00a0A']);
  expect(element.value).toBe(before);
  await press(element, '[data-view=preview]');
  await expect.poll(() => frameOf(element).contentDocument!.getElementById('changes')?.innerText)
    .toContain('Qty 5 → 6');
  await press(element, '[data-view=changes]');
  dropFiles(element, new File(['a,b\r\n1,2\r\n'], 'notes.csv'), new File([text], 'older.schedule.json'));
  await expect.poll(() => textOf(element, '.problems')).toContain('notes.csv cannot be compared with.');
  expect(said(element)).toContain('One schedule is taken at a time: notes.csv. Not read: older.schedule.json.');
});

test('what is handed over is chosen by form and section, says what is left out, and is kept in the file', async () => {
  const element = await open(demoContent());
  const frame = () => (part(element, 'elv-load-table iframe') as HTMLIFrameElement).contentDocument!;
  const sections = () => [...frame().querySelectorAll('main > section[id]')].map(({ id }) => id);
  await expect.poll(sections).toContain('explanations');
  await userEvent.selectOptions(part(element, '[data-do=form]')!, 'short');
  await expect.poll(sections).toEqual([
    'revisions', 'summary', 'panels', 'findings', 'accepted', 'supplies', 'ways', 'branches', 'runs', 'outputs', 'feeds', 'cases',
    'not-judged', 'commissioning',
  ]);
  expect(part(element, '[data-do=paper]')).toHaveProperty('value', 'A4-portrait');
  expect(frame().body.textContent.trim()).toMatch(/^Load table\s/);
  await userEvent.click(part(element, '.sections summary')!);
  await userEvent.click(part(element, '[data-section=cases]')!);
  await expect.poll(sections).not.toContain('cases');
  expect(frame().querySelector('.cautions')!.textContent).toContain('Left out of this print by choice: Cases and factors.');
  expect(textOf(element, '.sections summary')).toBe('Sections: 1 left out');
  const file = JSON.parse(element.value) as { view: unknown };
  expect(file.view).toEqual({ loadTable: { form: 'short', without: ['cases'] } });
  expect(element.schedule.undoLabel).toBeUndefined();
  removeElements();
  const read = readSchedule(JSON.stringify(file));
  if (!read.ok) throw new Error(read.problems[0]!.message);
  const again = await open(read.content);
  await expect.poll(() => part(again, '[data-section=cases]')).toHaveProperty('checked', false);
  await userEvent.click(part(again, '.sections summary')!);
  await userEvent.click(part(again, '[data-section=cases]')!);
  await userEvent.selectOptions(part(again, '[data-do=form]')!, 'full');
  await userEvent.click(part(again, '[data-do=allPictures]')!);
  await expect.poll(() => (JSON.parse(again.value) as { view: unknown }).view).toEqual({ loadTable: { form: 'full', allPictures: true } });
});

test('an issue stays in the history, and the next edit begins the next revision', async () => {
  const element = await open({ ...sample(), details: { revision: 'B', date: '2026-11-20', preparedBy: 'N. N.' } });
  await press(element, '[data-view=revisions]');
  const form = () => part(element, 'elv-issue-form')!;
  await expect.poll(() => part(element, 'elv-issue-form [name=revision]')).toHaveProperty('value', 'B');
  expect(part(element, 'elv-issue-form [name=date]')).toHaveProperty('value', '2026-11-20');
  await userEvent.selectOptions(part(element, 'elv-issue-form select')!, 'for construction');
  await userEvent.fill(part(element, 'elv-issue-form [name=name]')!, '');
  await press(element, 'elv-issue-form [data-do=issue]');
  await expect.poll(() => form().shadowRoot!.querySelector('[role=alert]')?.textContent).toBe('Say who issues it.');
  await userEvent.fill(part(element, 'elv-issue-form [name=name]')!, 'N. N.');
  await userEvent.fill(part(element, 'elv-issue-form [name=text]')!, 'Quay lights added');
  await userEvent.keyboard('{Enter}');
  const { document } = element.schedule;
  await expect.poll(() => document.revisions).toEqual([{
    revision: 'B', date: '2026-11-20', name: 'N. N.', text: 'Quay lights added', state: 'for construction',
    digest: expect.stringMatching(/^[0-9a-f]{64}$/) as string,
  }]);
  await expect.poll(() => parts(element, '.revisions input, .revisions button, elv-issue-form form')).toEqual([]);
  expect(textOf(element, '.revisions tbody')).toContain('For construction');
  await expect.poll(() => parts(element, 'p.spoken').map(({ textContent }) => textContent).join()).toContain('This is revision B as it was issued on Nov 20, 2026');
  const id = element.schedule.rows('supplies')[0]!.id;
  element.schedule.act('Tag', [{ op: 'set', sheet: 'supplies', id, key: 'rail', value: 'L9' }]);
  await expect.poll(() => part(element, 'elv-issue-form [name=revision]')).toHaveProperty('value', 'C');
  expect(document.details.revision).toBe('C');
  expect(document.revisions.map(({ revision }) => revision)).toEqual(['B']);
  element.undo();
  element.undo();
  await expect.poll(() => document.revisions).toEqual([]);
});

test.each(['preview', 'revisions', 'changes'] as const)('axe finds nothing: %s', async (view) => {
  const element =
    await open({ ...sample(), revisions: [{ revision: 'A', date: '2026-11-02', name: 'N. N.', text: 'First issue' }] });
  await press(element, `[data-view=${view}]`);
  if (view === 'changes') {
    drop(element, 'older.schedule.json', writeSchedule({ details: {}, sheets: {} }));
    await expect.poll(() => parts(element, 'elv-load-table tbody tr').length).toBeGreaterThan(0);
  }
  const { violations } = await axe.run(element, { iframes: false, resultTypes: ['violations'] });
  expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
});
