/**
 * What pictures look like. On a page the custom properties of the element around them hold; in a file of its own, where
 * there are none, the values behind them.
 */
export const PICTURE_STYLES = `
.picture { font-family: var(--elv-font, system-ui, 'Segoe UI', 'Noto Sans', sans-serif); font-size: 12px; font-variant-numeric: tabular-nums; }
.picture text { fill: var(--elv-ink, #182026); }
.picture .quiet { fill: var(--elv-ink-default, #545f68); }
.picture :is(.strong, tspan.over, tspan.near, tspan.incomplete) { font-weight: 600; }
.picture .heading { font-size: 15px; font-weight: 600; }
.picture .haloed { paint-order: stroke; stroke: var(--elv-surface-raised, #fff); stroke-width: 3px; stroke-linejoin: round; }
.picture .ground { fill: #fff; }
.picture .axis { stroke: var(--elv-ink, #182026); stroke-width: 1; }
.picture .grid { stroke: var(--elv-line, #d6dad7); stroke-width: 0.75; }
.picture .leader { stroke: var(--elv-line-strong, #85908c); stroke-width: 0.5; fill: none; }
.picture .curve { stroke: var(--elv-accent, #0d5c73); stroke-width: 2; fill: none; stroke-linejoin: round; }
.picture .limit { stroke: var(--elv-near, #855000); stroke-width: 1.25; stroke-dasharray: 7 4; }
.picture .end { stroke: var(--elv-line-strong, #85908c); stroke-width: 1; stroke-dasharray: 2 3; }
.picture .device { fill: var(--elv-accent, #0d5c73); stroke: var(--elv-surface-raised, #fff); stroke-width: 1; }
.picture .device.power { fill: var(--elv-surface-raised, #fff); stroke: var(--elv-accent, #0d5c73); stroke-width: 1.75; }
.picture .least { stroke: var(--elv-ink, #182026); stroke-width: 1.5; }
.picture .lacking { stroke: var(--elv-over, #a5211b); stroke-width: 2.5; }
.picture .frame { fill: var(--elv-line, #d6dad7); fill-opacity: 0.55; }
.picture .frame.unknown { fill: none; stroke: var(--elv-line-strong, #85908c); stroke-width: 1; stroke-dasharray: 3 3; }
.picture .fill { fill: var(--elv-ink-default, #545f68); }
.picture .fill.over, .picture :is(text, tspan).over, .picture .mark.over { fill: var(--elv-over, #a5211b); }
.picture .fill.near, .picture :is(text, tspan).near, .picture .mark.near { fill: var(--elv-near, #855000); }
.picture :is(text, tspan).incomplete, .picture .mark.incomplete { fill: var(--elv-incomplete, #574b96); }
.picture :is(text, tspan).ok, .picture .mark.ok { fill: var(--elv-ok, #3d6552); }
.picture .hatch { stroke: var(--elv-over, #a5211b); stroke-width: 1.5; fill: none; }
.picture .note { fill: var(--elv-surface-raised, #fff); stroke: var(--elv-over, #a5211b); stroke-width: 1; }
.picture .wire { stroke: var(--elv-ink, #182026); stroke-width: 1.25; }
.picture .open { fill: none; }
.picture .loose, .picture .missing { stroke-dasharray: 3 3; }
.picture .part { stroke: var(--elv-ink, #182026); stroke-width: 1.5; fill: none; stroke-linejoin: round; }
.picture .thin { stroke-width: 1; }
.picture .thick { stroke-width: 3; }
.picture .bus { stroke-width: 3; }
.picture .dashed { stroke-dasharray: 2.4 1; }
.picture .dot { fill: var(--elv-ink, #182026); }
.picture .sign { font-weight: 600; }
.picture .target { stroke: var(--elv-ink, #182026); stroke-width: 2; }
.picture .part { fill: var(--elv-surface, #f3f5f3); stroke: var(--elv-ink, #182026); stroke-width: 1; }
.picture .bar, .picture .partition { fill: var(--elv-ink, #182026); }
.picture .bracket { fill: var(--elv-line-strong, #85908c); fill-opacity: 0.55; }
`;
