export { ALLOWANCE, type Bill, type BillItem, type BillKind, type BillOptions, type BillSum } from './bill.ts';
export { billCsv } from './bill-csv.ts';
export { billTables, kindText, unitText, type BillTable } from './bill-table.ts';
export { billXlsx } from './bill-xlsx.ts';
export { compareBills, type BillChange } from './compare-bills.ts';
export { makeBill } from './make-bill.ts';
