export { DataFaults, printFault, type Fault } from './fault.ts';
export { checkFolder, loadCatalogue } from './load.ts';
export { readFolder, tableNames, type TableName, type Tables } from './read-folder.ts';
