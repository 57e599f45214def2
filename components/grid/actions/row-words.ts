import type { SheetName } from '../../../src/schedule/index.ts';
import { message } from '../../../src/words/index.ts';

/** What actions on whole rows of a sheet are called: whole messages, as the noun decides over the words around it. */
interface RowActions {
  /** The action by which a person begins a row. */
  readonly added: string;
  /** The action by which rows are deleted, and what is told of it. */
  readonly deletion: string;
  readonly deleted: string;
}

export const ROW_ACTIONS: Readonly<Record<SheetName, RowActions>> = {
  devices: {
    added: message('New device row'),
    deletion: message('Deletion of {n, plural, one {# device row} other {# device rows}}'),
    deleted: message('{n, plural, one {# device row} other {# device rows}} deleted.'),
  },
  types: {
    added: message('New device type'),
    deletion: message('Deletion of {n, plural, one {# type} other {# types}}'),
    deleted: message('{n, plural, one {# type} other {# types}} deleted.'),
  },
  supplies: {
    added: message('New supply'),
    deletion: message('Deletion of {n, plural, one {# supply row} other {# supply rows}}'),
    deleted: message('{n, plural, one {# supply row} other {# supply rows}} deleted.'),
  },
  ways: {
    added: message('New way'),
    deletion: message('Deletion of {n, plural, one {# way} other {# ways}}'),
    deleted: message('{n, plural, one {# way} other {# ways}} deleted.'),
  },
  branches: {
    added: message('New bus branch'),
    deletion: message('Deletion of {n, plural, one {# branch row} other {# branch rows}}'),
    deleted: message('{n, plural, one {# branch row} other {# branch rows}} deleted.'),
  },
  runs: {
    added: message('New run'),
    deletion: message('Deletion of {n, plural, one {# run} other {# runs}}'),
    deleted: message('{n, plural, one {# run} other {# runs}} deleted.'),
  },
  conductors: {
    added: message('New conductor'),
    deletion: message('Deletion of {n, plural, one {# conductor} other {# conductors}}'),
    deleted: message('{n, plural, one {# conductor} other {# conductors}} deleted.'),
  },
  modules: {
    added: message('New relay module'),
    deletion: message('Deletion of {n, plural, one {# module} other {# modules}}'),
    deleted: message('{n, plural, one {# module} other {# modules}} deleted.'),
  },
  outputs: {
    added: message('New relay output'),
    deletion: message('Deletion of {n, plural, one {# output} other {# outputs}}'),
    deleted: message('{n, plural, one {# output} other {# outputs}} deleted.'),
  },
  contacts: {
    added: message('New contact'),
    deletion: message('Deletion of {n, plural, one {# contact} other {# contacts}}'),
    deleted: message('{n, plural, one {# contact} other {# contacts}} deleted.'),
  },
  feeds: {
    added: message('New feed'),
    deletion: message('Deletion of {n, plural, one {# feed} other {# feeds}}'),
    deleted: message('{n, plural, one {# feed} other {# feeds}} deleted.'),
  },
  enclosures: {
    added: message('New enclosure'),
    deletion: message('Deletion of {n, plural, one {# enclosure} other {# enclosures}}'),
    deleted: message('{n, plural, one {# enclosure} other {# enclosures}} deleted.'),
  },
  terminals: {
    added: message('New terminal'),
    deletion: message('Deletion of {n, plural, one {# terminal} other {# terminals}}'),
    deleted: message('{n, plural, one {# terminal} other {# terminals}} deleted.'),
  },
  cases: {
    added: message('New case'),
    deletion: message('Deletion of {n, plural, one {# case} other {# cases}}'),
    deleted: message('{n, plural, one {# case} other {# cases}} deleted.'),
  },
  factors: {
    added: message('New factor'),
    deletion: message('Deletion of {n, plural, one {# factor} other {# factors}}'),
    deleted: message('{n, plural, one {# factor} other {# factors}} deleted.'),
  },
};
