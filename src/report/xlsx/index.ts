export { loadTableXlsx } from './load-table-xlsx.ts';
