export {
  ownOfType, rowsToSwap, sumDevices, swapType, TYPE_VALUES, type DeviceSums, type TypeSwap,
} from './swap-type.ts';
