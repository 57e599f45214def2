import { defineElement } from '../look/index.ts';
import { CaseArea } from './case-area.ts';
import { CaseComparison } from './case-comparison.ts';
import { FactorMatrix } from './factor-matrix.ts';
import { GroupList } from './group-list.ts';
import { ProfileForm } from './profile-form.ts';

defineElement('elv-group-list', GroupList);
defineElement('elv-profile-form', ProfileForm);
defineElement('elv-factor-matrix', FactorMatrix);
defineElement('elv-case-comparison', CaseComparison);
defineElement('elv-case-area', CaseArea);

declare global {
  interface HTMLElementTagNameMap {
    'elv-case-area': CaseArea;
    'elv-case-comparison': CaseComparison;
    'elv-factor-matrix': FactorMatrix;
    'elv-group-list': GroupList;
    'elv-profile-form': ProfileForm;
  }
}
