export { proposalSentences } from './proposal-sentences.ts';
export { heatText, partName, railHeat, standingOfRail, widthText, type RailHeat } from './rail-figures.ts';
