import type { SheetName } from '../schedule/index.ts';
import { message } from '../words/index.ts';

/** What a sentence calls a row that has a tag. */
export const TAGGED: Readonly<Record<SheetName, string>> = {
  devices: message('Ref {tag}'),
  types: message('Type {tag}'),
  supplies: message('Rail {tag}'),
  ways: message('Way {tag}'),
  branches: message('Branch {tag}'),
  runs: message('Run {tag}'),
  conductors: message('Conductor {tag}'),
  modules: message('Module {tag}'),
  outputs: message('Output {tag}'),
  contacts: message('Contact {tag}'),
  feeds: message('Feed {tag}'),
  enclosures: message('Enclosure {tag}'),
  terminals: message('Terminal {tag}'),
  cases: message('Case {tag}'),
  factors: message('Factor of {tag}'),
};

/** What a sentence calls a row that has none, whose place the finding tells. */
export const UNTAGGED: Readonly<Record<SheetName, string>> = {
  devices: message('A device row without a tag'),
  types: message('A device type without a tag'),
  supplies: message('A supply without a tag'),
  ways: message('A way without a tag'),
  branches: message('A bus branch without a tag'),
  runs: message('A run without a tag'),
  conductors: message('A conductor without a tag'),
  modules: message('A relay module without a tag'),
  outputs: message('A relay output without a tag'),
  contacts: message('A contact without a tag'),
  feeds: message('A feed without a tag'),
  enclosures: message('An enclosure without a tag'),
  terminals: message('A terminal without a designation'),
  cases: message('A case without a name'),
  factors: message('A factor without a group'),
};
