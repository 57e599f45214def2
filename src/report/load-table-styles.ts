/** Styles of the load table, for screen and paper. */
export const LOAD_TABLE_STYLES = `
:root { color-scheme: light; --ink: #1c2024; --quiet: #55606a; --line: #c9cfd5; --over: #a1182a; --near: #7a4b00; --tint: #f2f4f6; }
* { box-sizing: border-box; }
body { margin: 2rem auto; max-width: 110rem; padding: 0 1.5rem; color: var(--ink); background: #fff;
  font: 0.875rem/1.45 system-ui, 'Liberation Sans', 'DejaVu Sans', sans-serif; }
h1 { margin: 0 0 1rem; font-size: 1.6rem; font-weight: 600; }
h2 { margin: 2rem 0 0.5rem; font-size: 1.1rem; font-weight: 600; break-after: avoid; }
section > p { margin: 0 0 0.5rem; max-width: 60rem; }
dl { display: grid; grid-template-columns: repeat(auto-fill, minmax(14rem, 1fr)); gap: 0.6rem 2rem; margin: 0 0 1.25rem; }
dt { color: var(--quiet); font-size: 0.75rem; }
dd { margin: 0; overflow-wrap: anywhere; }
dl .long { grid-column: span 2; }
@media (max-width: 30rem) { dl .long { grid-column: auto; } }
.issue dd { font-variant-numeric: tabular-nums; }
.cautions { border-inline-start: 3px solid var(--near); padding-inline-start: 0.75rem; }
.cautions p { margin: 0; }
nav ul { display: flex; flex-wrap: wrap; gap: 0.25rem 1.25rem; margin: 1.25rem 0 0; padding: 0; list-style: none; }
nav a { color: inherit; }
.pictures { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 30rem), 1fr)); gap: 1rem 2rem; margin: 0 0 1.25rem; align-items: start; }
figure { margin: 0; max-width: 50rem; break-inside: avoid; }
.drawing { max-width: none; margin: 0 0 1rem; overflow-x: auto; }
.drawing:focus-visible { outline: 2px solid currentColor; outline-offset: 2px; }
.drawing svg { display: block; }
.pictures svg { display: block; width: 100%; height: auto; }
.beside .pictures { grid-template-columns: minmax(0, 42rem); }
.beside { display: flex; flex-wrap: wrap; gap: 0 4rem; align-items: start; }
.beside h2 { flex: 1 0 100%; }
.beside .pictures { flex: 1 1 30rem; }
.scroll { overflow-x: auto; margin: 0 0 1.25rem; }
.scroll:focus-visible { outline: 2px solid currentColor; outline-offset: 2px; }
table { width: 100%; border-collapse: collapse; font-variant-numeric: tabular-nums; }
table.usual { width: auto; min-width: min(100%, 30rem); }
th, td { padding: 0.2rem 0.45rem; border-bottom: 1px solid var(--line); text-align: start; vertical-align: top; }
th { border-bottom: 1px solid var(--ink); color: var(--quiet); font-weight: 500; vertical-align: bottom; }
tr.title th { border-bottom: 0; padding-top: 0.35rem; color: var(--ink); background: var(--tint); font-weight: 600; }
tr.title span { color: var(--quiet); font-weight: 400; margin-inline-start: 1em; }
th.number, td.number { text-align: end; }
td.number, td.tag { white-space: nowrap; }
td.text { min-width: 6em; overflow-wrap: break-word; }
tr.total td { border-top: 1px solid var(--ink); font-weight: 600; }
td.default { color: var(--quiet); font-style: italic; }
td.fill { min-width: 6em; border: 1px solid var(--line); }
.over, .near { font-weight: 600; }
.over { color: var(--over); }
.near { color: var(--near); }
footer { margin-top: 2rem; color: var(--quiet); max-width: 60rem; }
@page {
  @bottom-left { font: 6.5pt/1.35 system-ui, 'Liberation Sans', 'DejaVu Sans', sans-serif; white-space: pre; vertical-align: top; padding-top: 2mm; text-align: left; color: #333; }
  @bottom-right { font: 8pt system-ui, 'Liberation Sans', 'DejaVu Sans', sans-serif; vertical-align: top; padding-top: 2mm; color: #333; }
}
@media screen and (min-width: 60rem) { table:not(.widest) td.short { white-space: nowrap; } }
@media print {
  :root { font-size: 8.5pt; }
  body { margin: 0; padding: 0; max-width: none; font-size: 8pt; line-height: 1.2; }
  nav { display: none; }
  nav.paged { display: block; }
  nav.paged ul { display: grid; grid-template-columns: repeat(3, 1fr); gap: 0.3mm 10mm; }
  nav.paged li { display: flex; justify-content: space-between; border-bottom: 1px dotted var(--line); }
  nav.paged a { text-decoration: none; }
  nav.paged span { font-variant-numeric: tabular-nums; }
  h2 { margin-top: 1.4rem; }
  section > p { break-after: avoid; }
  .scroll, .drawing { overflow: visible; }
  thead { display: table-header-group; break-after: avoid; }
  tr { break-inside: avoid; }
  tr.total { break-before: avoid; }
  th, td { padding: 0.4mm 1mm; line-height: 1.15; }
  table.wide { font-size: 7.5pt; }
  table.widest { font-size: 6.5pt; }
  table.widest :is(th, td) { padding: 0.5mm 0.7mm; }
  td.text { min-width: 0; overflow-wrap: anywhere; }
  td.fill { min-width: 22mm; height: 7mm; border-color: #555; }
  thead { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
  .over, .near { color: inherit; }
  .over { font-weight: 700; }
  :is(.short, .site) h2 { margin-block: 0.9rem 0.3rem; }
  :is(.short, .site) :is(dl, .scroll) { margin-block: 0 0.6rem; }
  :is(.short, .site) table:not(.widest) { font-size: 8pt; }
  :is(.short, .site) table :is(th, td) { padding: 0.25mm 0.8mm; }
  :is(.short, .site) td.fill { height: 5mm; }
  .short #runs td.short { white-space: nowrap; }
}
`;
