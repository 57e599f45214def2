const element = document.querySelector('elv-load-schedule')!;
const find = (id: string): HTMLElement => document.getElementById(id)!;
const KEPT = 'kept-schedule';

/** A new element with a text. */
function made(name: string, text: string, className = ''): HTMLElement {
  const element = document.createElement(name);
  element.textContent = text;
  element.className = className;
  return element;
}

function showTotals(): void {
  const { schedule } = element;
  const amperes = (value: unknown) => typeof value === 'number' ? `${value.toFixed(2)} A` : 'unknown';
  find('totals').replaceChildren(...schedule.rows('supplies').map(({ id }) => {
    const cell = (key: string) => schedule.value('supplies', id, key);
    const line = document.createElement('tr');
    line.append(
      made('td', String(cell('rail'))), made('td', amperes(cell('demand')), 'figure'),
      made('td', amperes(cell('usable')), 'figure')
    );
    return line;
  }));
  const choices = schedule.findings.map(({ message }, index) => Object.assign(
    document.createElement('option'), { value: String(index), text: message }
  ));
  find('places').replaceChildren(
    Object.assign(document.createElement('option'), { value: '', text: 'choose a finding' }), ...choices
  );
}

function note(text: string): void {
  find('events').prepend(made('li', text));
}

element.addEventListener('elv-load', ({ name }) => {
  showTotals();
  note(`Read: ${name}`);
});
element.addEventListener('elv-change', ({ label, cause }) => {
  showTotals();
  note(`${cause}: ${label}`);
});
element.addEventListener('elv-error', ({ problems }) => { note(problems[0]!.message); });

find('keep').addEventListener('click', () => {
  const { value } = element;
  localStorage.setItem(KEPT, value);
  void element.markSaved(value);
  note('Kept by the page');
});
find('bring').addEventListener('click', () => {
  const kept = localStorage.getItem(KEPT);
  if (kept === null) {
    note('Nothing is kept yet');
    return;
  }
  element.value = kept;
  showTotals();
  note('Brought back by the page');
});
find('readonly').addEventListener('change', (event) => {
  element.readonly = (event.currentTarget as HTMLInputElement).checked;
});
find('places').addEventListener('change', ({ currentTarget }) => {
  const { value } = currentTarget as HTMLSelectElement;
  const finding = value === '' ? undefined : element.schedule.findings[Number(value)];
  if (finding !== undefined) void element.select(finding.sheet, finding.row, finding.key);
});

export {};
