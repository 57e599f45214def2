import type { PanelChoice } from '../../engine/index.ts';
import type { Severity, Standing } from '../../findings/index.ts';
import type { DetailKey, SheetName } from '../../schedule/index.ts';
import type { Paper } from '../paper.ts';
import type { Form, SectionName } from './forms.ts';
import type { Words } from '../../words/index.ts';

/** One cell of a printed table. */
export interface ReportCell {
  readonly text: string;
  /** Numbers stand on the right; a tag must not be broken. */
  readonly kind: 'number' | 'text' | 'tag';
  /** The cell says how something stands, in words. */
  readonly state?: Standing | Severity;
  /** The figure came by default, not from a person. */
  readonly inherited?: true;
  /** A place to write on paper. */
  readonly toFill?: true;
}

export interface ReportColumn {
  readonly title: string;
  readonly kind: 'number' | 'text';
}

export interface ReportRow {
  readonly cells: readonly ReportCell[];
  /** The row carries the totals of those above it. */
  readonly isTotal?: true;
}

/** A table with a heading line; every row has a cell for each column. */
export interface ReportTable {
  readonly title?: string;
  /** What stands beside the title, such as a loading in words. */
  readonly sentence?: string;
  readonly columns: readonly ReportColumn[];
  readonly rows: readonly ReportRow[];
  /** How many columns at its start name a row: where it is too wide for a page, each part has them. 2 by default. */
  readonly heads?: number;
}

export interface ReportSection {
  /** Name for links, in kebab-case. */
  readonly name: string;
  readonly title: string;
  readonly sentences: readonly string[];
  readonly tables: readonly ReportTable[];
  /** Pictures as SVG markup, which says in words what it shows. */
  readonly pictures?: readonly string[];
  /** Sheets of drawings as SVG markup, each as large as it is, which says in words what it shows. */
  readonly drawings?: readonly string[];
}

/** A line of the title block. */
export interface ReportDetail {
  readonly key: DetailKey | 'state';
  readonly title: string;
  readonly text: string;
}

/** What tells one print of a load table from another; it stands on each page. */
export interface ReportIssue {
  /** When it was made, as it is to be printed. */
  readonly generated: string;
  /** Name and version of the software. */
  readonly software: string;
  /** SHA-256 of the schedule, 64 hexadecimal digits. */
  readonly digest: string;
}

/** What a load table was asked to be: who makes it anew of the same schedule comes to the same one. */
export interface ReportScope {
  /** When the table was made, as it was given. */
  readonly generated: string;
  /** The one sheet that it is of. */
  readonly sheet?: SheetName | undefined;
  /** The panel that it is of, `null` for what is in none; all of them where there is none. */
  readonly panel?: PanelChoice;
  /** The paper that its drawings fit. */
  readonly paper?: Paper | undefined;
  /** Whether it tells what has changed since an older schedule, which it does not carry. */
  readonly since: boolean;
  /** What it is for; `full` where there is none. */
  readonly form?: Form;
  /** What was left out by choice; nothing where there is none. */
  readonly without?: readonly SectionName[];
  /** Whether it has pictures of all runs; only of those that are not within their limits where there is none. */
  readonly allPictures?: boolean;
}

/** The load table, from which every form of it is made. */
export interface Report {
  /** The language that all of it is in. */
  readonly words: Words;
  readonly scope: ReportScope;
  readonly title: string;
  /** What it is about, for the head of each page: project and panel. */
  readonly subject: string;
  readonly details: readonly ReportDetail[];
  readonly issue: ReportIssue;
  readonly cautions: readonly string[];
  readonly sections: readonly ReportSection[];
  /** What would be a section too, and was left out by choice. */
  readonly leftOut: readonly { readonly name: SectionName; readonly title: string }[];
}
