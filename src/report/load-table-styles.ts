/** Styles of the load table, for screen and paper. */
export const LOAD_TABLE_STYLES = `
:root { color-scheme: light; --ink: #1c2024; --quiet: #5a636c; --line: #c9cfd5; --over: #a1182a; --near: #7a4b00; }
body { margin: 2rem auto; max-width: 110rem; padding: 0 1.5rem; color: var(--ink); background: #fff;
  font: 0.875rem/1.45 system-ui, sans-serif; }
h1 { margin: 0 0 1rem; font-size: 1.6rem; font-weight: 600; }
h2 { margin: 2rem 0 0.5rem; font-size: 1.1rem; font-weight: 600; break-after: avoid; }
dl { display: grid; grid-template-columns: repeat(auto-fill, minmax(14rem, 1fr)); gap: 0.6rem 2rem; margin: 0 0 1.25rem; }
dt { color: var(--quiet); font-size: 0.75rem; }
dd { margin: 0; overflow-wrap: anywhere; }
.caution { margin: 0; }
section[aria-label] { border-inline-start: 3px solid var(--near); padding-inline-start: 0.75rem; }
.counts { display: flex; flex-wrap: wrap; gap: 0.25rem 1.5rem; margin: 0 0 0.5rem; padding: 0; list-style: none; }
section { overflow-x: auto; }
table { width: 100%; border-collapse: collapse; font-variant-numeric: tabular-nums; }
th, td { padding: 0.2rem 0.5rem; border-bottom: 1px solid var(--line); text-align: start; vertical-align: top; }
th { border-bottom: 1px solid var(--ink); color: var(--quiet); font-weight: 500; vertical-align: bottom; }
th.number, td.number { text-align: end; }
td.number, td.tag { white-space: nowrap; }
td p { margin: 0; color: var(--quiet); }
.default { color: var(--quiet); font-style: italic; }
.over, .near { font-weight: 600; }
.over { color: var(--over); }
.near { color: var(--near); }
span.over, span.near, span.incomplete, span.ok, span.note { white-space: nowrap; }
footer { margin-top: 2rem; color: var(--quiet); }
@page { size: A4 landscape; margin: 12mm; @bottom-right { content: counter(page) ' / ' counter(pages); font: 7pt system-ui, sans-serif; } }
@media print {
  :root { font-size: 8.5pt; }
  body { margin: 0; padding: 0; }
  section { overflow: visible; }
  thead { display: table-header-group; }
  tr { break-inside: avoid; }
  th, td { padding: 0.6mm 1.2mm; }
}
`;
