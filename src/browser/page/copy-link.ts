/**
 * Makes a button copy the address of the page as it stands, and says so beside it. Where the
 * browser refuses, the address is put there to be copied by hand.
 */
export const copyLinkButton = (button: HTMLButtonElement, status: HTMLElement): void => {
  button.hidden = false;
  button.addEventListener('click', () => {
    const address = location.href;
    const said = navigator.clipboard
      ? navigator.clipboard.writeText(address).then(
          () => 'Copied.',
          () => address,
        )
      : Promise.resolve(address);
    void said.then((text) => {
      status.textContent = text;
    });
  });
};
