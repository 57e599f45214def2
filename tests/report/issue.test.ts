import { describe, expect, it } from 'vitest';
import { readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { buildReport, matchesDigest, scheduleDigest } from '../../src/report/index.ts';
import { checkIssue, issueSchedule, type Issue } from '../../src/report/digest/index.ts';
import { nextRevision, setCells, setRevisions, type Content } from '../../src/schedule/index.ts';
import { loadWords } from '../../src/words/index.ts';
import { demoContent } from './demo.ts';

const ISSUE: Issue = { revision: 'B', date: '2026-11-30', name: 'N. N.', text: 'Quay lights added', state: 'for construction' };
const SMALL: Content = {
  details: { project: 'Quay', revision: 'B', preparedBy: 'N. N.' },
  sheets: { supplies: [{ rail: 'L1', rated: 10 }] },
  revisions: [{ revision: 'A', date: '2026-11-02', name: 'N. N.', text: 'First issue' }],
};

function issued(content: Content = SMALL, issue: Issue = ISSUE): LoadSchedule {
  const schedule = new LoadSchedule(content);
  schedule.act('Issue', issueSchedule(schedule.content(), issue));
  return schedule;
}
const rate = (schedule: LoadSchedule, value: number) => {
  schedule.act('Rating', setCells(schedule.document, [{ sheet: 'supplies', id: schedule.rows('supplies')[0]!.id, key: 'rated', value }]));
};
const section = (schedule: LoadSchedule) => buildReport(schedule, { generated: '2026-11-30' }).sections.find(({ name }) => name === 'revisions')!;

describe('an issue', () => {
  it('stays in the history with the digest of the schedule that it was', () => {
    const schedule = issued();
    const { document: { details, revisions } } = schedule;
    expect(details).toEqual({ project: 'Quay', revision: 'B', date: '2026-11-30', preparedBy: 'N. N.' });
    // The digest is that of the file without the line of the issue, whoever writes it.
    const before = { ...SMALL, details };
    expect(revisions).toEqual([...SMALL.revisions!, { ...ISSUE, digest: scheduleDigest(before) }]);
    expect(checkIssue(schedule.content())).toEqual({ issue: revisions[1], isUnchanged: true });
    expect(matchesDigest(schedule.content(), revisions[1]!.digest!.slice(0, 16))).toBe(true);
  });

  it('is read as it was written, also after its file was opened again', () => {
    const text = writeSchedule(issued().content());
    const read = readSchedule(text);
    if (!read.ok) throw new Error(read.problems[0]!.message);
    expect(checkIssue(read.content)).toMatchObject({ isUnchanged: true });
    expect(writeSchedule(new LoadSchedule(read.content).content())).toBe(text);
  });

  it('is no longer the schedule with the next edit, which begins the next revision; undo goes back to it', () => {
    const schedule = issued();
    rate(schedule, 20);
    expect(schedule.document.details).toEqual({ project: 'Quay', revision: 'C', preparedBy: 'N. N.' });
    expect(checkIssue(schedule.content())).toBeUndefined();
    expect(schedule.document.revisions[1]).toMatchObject({ revision: 'B', state: 'for construction' });
    rate(schedule, 5);
    expect(schedule.document.details.revision).toBe('C');
    schedule.undo();
    schedule.undo();
    expect(schedule.document.details.revision).toBe('B');
    expect(checkIssue(schedule.content())).toMatchObject({ isUnchanged: true });
    schedule.redo();
    expect(schedule.document.details.revision).toBe('C');
  });

  it('is not typed over: a revision of its name begins the next one, another name and its date stand', () => {
    const schedule = issued();
    schedule.act('Project', [{ op: 'details', details: { ...schedule.document.details, project: 'Pier' } }]);
    expect(schedule.document.details).toMatchObject({ project: 'Pier', revision: 'C' });
    schedule.act('Revision', [{ op: 'details', details: { ...schedule.document.details, revision: 'B' } }]);
    expect(schedule.document.details.revision).toBe('B');
    rate(schedule, 3);
    expect(schedule.document.details.revision).toBe('C');
    schedule.act('Revision', [{ op: 'details', details: { revision: 'D2', date: '2026-12-24' } }]);
    expect(schedule.document.details).toEqual({ revision: 'D2', date: '2026-12-24' });
    expect(schedule.document.revisions.map(({ revision }) => revision)).toEqual(['A', 'B']);
  });

  it('that was changed outside is told from what was issued', () => {
    const content = issued().content();
    const tampered = { ...content, sheets: { supplies: [{ rail: 'L1', rated: 20 }] } };
    expect(checkIssue(tampered)).toMatchObject({ isUnchanged: false });
    expect(section(new LoadSchedule(tampered)).sentences[0]).toContain('its SHA-256 is not that of the history');
  });

  it('needs a name that no issue has, and is neither changed nor removed', () => {
    const schedule = issued();
    expect(() => issueSchedule(schedule.content(), ISSUE)).toThrow(new RangeError('Revision B is issued already.'));
    expect(() => issueSchedule(schedule.content(), { ...ISSUE, revision: ' ' })).toThrow('needs the name');
    const { document, document: { revisions } } = schedule;
    expect(() => setRevisions(document, revisions.slice(0, 1))).toThrow(new RangeError('Revision B is issued, and stays as it is.'));
    expect(() => setRevisions(document, [revisions[0]!, { ...revisions[1]!, text: 'x' }])).toThrow('stays');
    expect(setRevisions(document, [{ ...revisions[0]!, text: 'First' }, revisions[1]!])).toHaveLength(1);
  });

  it('takes the line that was written by hand for it, and those written since do not matter to it', () => {
    const schedule = issued({ ...SMALL, revisions: [...SMALL.revisions!, { revision: 'B', date: '', name: '', text: 'To come' }] });
    expect(schedule.document.revisions.map(({ revision, text }) => `${revision}: ${text}`)).toEqual(['A: First issue', 'B: Quay lights added']);
    schedule.act('Line', setRevisions(schedule.document, [...schedule.document.revisions, { revision: 'C', date: '', name: '', text: '' }]));
    expect(checkIssue(schedule.content())).toMatchObject({ isUnchanged: true });
    expect(schedule.document.details.revision).toBe('B');
  });
});

it.each([
  ['', 'A'], ['A', 'B'], ['Z', 'AA'], ['AZ', 'BA'], ['9', '10'], ['02', '03'], ['P09', 'P10'], ['0.1', '0.2'], ['z', 'aa'], ['Ö', 'Ö2'],
])('after revision «%s» comes «%s»', (last, next) => {
  expect(nextRevision([{ revision: last, date: '', name: '', text: '' }])).toBe(next);
});

it('a name that the history has is passed over', () => {
  const of = (revision: string) => ({ revision, date: '', name: '', text: '' });
  expect(nextRevision([of('C'), of('B')])).toBe('D');
  expect(nextRevision([])).toBe('A');
});

describe('the load table', () => {
  it('lists what was issued for what, and says whether it is that', async () => {
    const schedule = issued(demoContent(), { ...ISSUE, revision: 'X' });
    expect(section(schedule).sentences).toEqual(['This is revision X as it was issued on Nov 30, 2026: its SHA-256 is that of the history.']);
    expect(section(schedule).tables[0]!.rows.at(-1)!.cells.map(({ text }) => text))
      .toEqual(['X', 'Nov 30, 2026', 'N. N.', 'Quay lights added', 'For construction', expect.stringMatching(/^([0-9a-f]{4} ){3}[0-9a-f]{4}$/)]);
    const state = (of: LoadSchedule) => buildReport(of, { generated: '' }).details.find(({ key }) => key === 'state')?.text;
    expect(state(schedule)).toBe('For construction');
    const content = schedule.content();
    expect(state(new LoadSchedule({ ...content, details: { ...content.details, project: 'x' } })))
      .toBe('Not as it was issued');
    rate(schedule, 7);
    expect(state(schedule)).toBe('Not issued yet');
    const german = new LoadSchedule(schedule.content(), { words: await loadWords('de') });
    expect(section(german).sentences).toEqual(['Revision X wurde am 30.11.2026 herausgegeben. Was seither anders ist, gehört zu Revision Y, die nicht herausgegeben ist.']);
    expect(section(german).tables[0]!.rows.at(-1)!.cells[3]!.text).toBe('Noch nicht herausgegeben');
  });

  it('has neither where nothing is issued', () => {
    const { sentences, tables: [table] } = section(new LoadSchedule(SMALL));
    expect(sentences).toEqual([]);
    expect(table!.columns).toHaveLength(4);
  });
});

it.each([
  [{ state: 'done' }, 'Revision 1: “state” must be one of “for approval”, “for construction”, “as built”. Put that right.'],
  [{ digest: 'F00' }, 'Revision 1: “digest” must be 64 hexadecimal digits in small letters. Put that right, or leave it out.'],
])('%j in a file is refused with its place', (wrong, sentence) => {
  const file: { revisions?: unknown } = JSON.parse(writeSchedule(SMALL)) as object;
  file.revisions = [{ revision: 'A', ...wrong }];
  const read = readSchedule(JSON.stringify(file));
  expect(read.ok ? [] : read.problems.map(({ message, path }) => `${path}: ${message}`))
    .toEqual([`/revisions/0/${Object.keys(wrong)[0]!}: ${sentence}`]);
});
