/** Whether bytes are those of a workbook, which is a package of files. */
export function isWorkbook(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b;
}

/**
 * Whether a file is a workbook, or by its name should be one. It stands apart from what reads workbooks, so as to be
 * small.
 */
export function isWorkbookFile(name: string, bytes: Uint8Array): boolean {
  return isWorkbook(bytes) || /\.xls[xm]?$/i.test(name);
}
