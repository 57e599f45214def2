import { defineElement } from '../look/index.ts';
import { IssueForm } from './issue-form.ts';
import { LoadTable } from './load-table.ts';

defineElement('elv-load-table', LoadTable);
defineElement('elv-issue-form', IssueForm);

declare global {
  interface HTMLElementTagNameMap { 'elv-load-table': LoadTable; 'elv-issue-form': IssueForm }
}
