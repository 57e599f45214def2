export { drawing, sheetOn, type Drawing, type DrawingKind } from './drawing.ts';
