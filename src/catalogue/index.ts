export { DataFaults, printFault, type Fault } from './fault.ts';
export { checkFolder, loadCatalogue } from './load.ts';
export { readOwnFolder } from './own-tables.ts';
export { readFolder, tableNames, type TableName, type Tables } from './read-folder.ts';
