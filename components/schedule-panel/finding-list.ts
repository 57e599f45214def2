import { css, html, nothing, svg, type TemplateResult } from 'lit';
import { acceptedLine } from '../acceptance-form/index.ts';
import { findingName } from '../../src/findings/finding-name.ts';
import type { Finding, Severity } from '../../src/findings/finding.ts';
import { mayHaveRemedies } from '../../src/rework/may-have-remedies.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { columnOf, SCHEMA } from '../../src/schedule/index.ts';
import { GoToEvent } from '../events/index.ts';
import { markShape, standingOut } from '../look/index.ts';
import { message } from '../../src/words/index.ts';

/** The groups of findings: by severity those that are open, and those that somebody has accepted. */
export type FindingGroup = Severity | 'accepted';

/** Headings of the groups. */
export const GROUP_TITLES: Readonly<Record<FindingGroup, string>> = {
  over: message('Over limit'), near: message('Near limit'), incomplete: message('Incomplete'), note: message('Notes'),
  accepted: message('Accepted'),
};

/** What the list needs of the panel. */
export interface FindingListHost {
  readonly schedule: LoadSchedule;
  readonly readonly: boolean;
  /** The finding whose acceptance is being entered. */
  readonly accepting: string;
  accept(name: string): void;
  /** The finding of which it is shown what would mend it. */
  readonly mending: string;
  /** Changes whenever the schedule, or its language, did. */
  readonly revision: number;
  mend(name: string): void;
}

const isMendable = (finding: Finding): boolean => finding.accepted === undefined && mayHaveRemedies(finding);

const ACCEPT = svg`<svg class="icon" viewBox="0 0 16 16" aria-hidden="true"><path d="M3 8.5 6.5 12 13 4.5"/></svg>`;

function findingLine(host: FindingListHost, finding: Finding): TemplateResult {
  const { severity, sheet, id, key, tag, row, accepted } = finding;
  const { words } = host.schedule;
  const go = (event: Event) => event.currentTarget!.dispatchEvent(new GoToEvent({ sheet, id, key }));
  const where = words.say(
    '{sheet}, row {row}, {column}',
    { sheet: words.text(SCHEMA[sheet].title), row, column: words.text(columnOf(sheet, key).title) }
  );
  const name = findingName(finding);
  const remedy = host.readonly ? undefined : host.schedule.remedy(finding);
  return html`<li><div class="line"><button type="button" class="finding" title=${where} @click=${go}>
      ${markShape(accepted === undefined ? severity : 'accepted')}<span class="spoken">${standingOut(finding.message, tag)}${acceptedLine(finding, words)}</span></button>
    ${host.readonly ? nothing : accepted === undefined
      ? html`<button type="button" class="accept" data-finding=${name} title=${words.say('Accept this finding, with a reason and a name')} aria-label=${words.say('Accept this finding')}
          aria-expanded=${host.accepting === name} @click=${() => { host.accept(host.accepting === name ? '' : name); }}>${ACCEPT}</button>`
      : html`<button type="button" class="link withdraw" title=${words.say('The finding is open again')}
          @click=${() => { host.schedule.withdraw(finding); }}>${words.say('Withdraw')}</button>`}
    ${remedy === undefined ? nothing : html`<button type="button" class="link remedy"
      @click=${() => { host.schedule.act(remedy.label, remedy.changes()); }}>${remedy.label}</button>`}
    ${host.readonly || !isMendable(finding) ? nothing : html`<button type="button" class="link mend" data-mend=${name} aria-expanded=${host.mending === name}
      @click=${() => { host.mend(host.mending === name ? '' : name); }}>${words.say('What would mend it')}</button>`}</div>
    ${host.mending === name && isMendable(finding) && !host.readonly ? html`<elv-remedy-list asked .schedule=${host.schedule} .finding=${finding} .revision=${host.revision}></elv-remedy-list>` : nothing}
    ${host.accepting === name && accepted === undefined ? html`<elv-acceptance-form .schedule=${host.schedule} .finding=${finding}
      @close=${() => { host.accept(''); }}></elv-acceptance-form>` : nothing}
  </li>`;
}

/** How a group of findings is shown. */
export interface GroupView {
  readonly open: boolean;
  readonly onToggle: (event: Event) => void;
  /** How many are listed; the rest is a button's press away. */
  readonly shown: number;
  /** Called to list more of them. */
  readonly more: () => void;
}

/** The findings of one group under a heading with their number. */
export function findingGroup(
  host: FindingListHost, group: FindingGroup, findings: readonly Finding[], { open, onToggle, shown, more }: GroupView,
): TemplateResult {
  const { words } = host.schedule;
  const rest = findings.length - shown;
  return html`<details .open=${open} id="findings-${group}" @toggle=${onToggle}>
    <summary class=${group}>${markShape(group)}${words.say(GROUP_TITLES[group])} <span class="count">${findings.length}</span></summary>
    ${open ? html`<ul>${findings.slice(0, shown).map((finding) => findingLine(host, finding))}</ul>
      ${rest > 0 ? html`<button type="button" class="link more" @click=${more}>${words.say('Show {n} more of {all}', { n: Math.min(rest, 100), all: findings.length })}</button>` : nothing}` : nothing}
  </details>`;
}

export const findingListStyles = css`
  li > .line { display: flex; flex-wrap: wrap; align-items: start; }
  .finding {
    flex: 1 0 calc(100% - 36px);
    inline-size: 0;
    align-items: baseline;
    gap: 0.6em;
    padding: 4px 4px 4px 14px;
    border-radius: 0;
    text-align: start;
    white-space: normal;
  }
  .finding b { font-weight: 600; }
  .finding .mark { position: relative; inset-block-start: 1px; }
  .finding:focus-visible { outline-offset: -3px; }
  .accept { flex: none; padding: 0; margin-inline-end: 6px; justify-content: center; color: var(--elv-ink-default); }
  .accept:focus-visible, .withdraw:focus-visible, .remedy:focus-visible, .mend:focus-visible { outline-offset: -2px; }
  .withdraw, .remedy, .mend { flex: none; margin-inline-start: calc(14px + 1.1em); margin-block-end: 3px; }
  .acceptance { display: block; }
  elv-acceptance-form, elv-remedy-list { margin: 0 14px 4px; }
  .more { margin: 2px 14px 6px; }
`;
