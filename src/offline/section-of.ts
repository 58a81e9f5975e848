/** The section that a path below the base is listed in: its folder, and one more where those are many. */
export const sectionOf = (path: string): string => {
  const names = path.split('/').slice(0, -1);
  return names.length === 0 ? 'top' : names.slice(0, names[0] === 'replace' ? 2 : 1).join('-');
};
