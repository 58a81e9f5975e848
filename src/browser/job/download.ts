/** Hands a text to the visitor as a file. */
export const download = (name: string, text: string, type: string): void => {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 1000);
};

/** A title as the name of a file. */
export const fileName = (title: string, what: string, ending: string): string => {
  const plain = title
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-|-$/gu, '')
    .slice(0, 60);
  return `${plain || 'job'}-${what}.${ending}`;
};
