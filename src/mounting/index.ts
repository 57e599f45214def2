export { arrange, widthOnRail, type Arrangement, type Item, type Outcome } from './arrange.ts';
export { END_BRACKET, MOUNTED_SHEETS, MountedParts, PARTITION, type Band, type MountedPart, type MountedSheet } from './mounted-parts.ts';
export { panelRails, type PanelRail, type PanelRails } from './panel-rails.ts';
export { placeParts, placingChanges, type Placement, type Placing } from './place-parts.ts';
export { MODULE, MODULES, proposeRails, railsFor, type RailProposal } from './propose-rails.ts';
