const KEY = 'theme';

const choose = (choice: string): void => {
  if (choice) document.documentElement.dataset['theme'] = choice;
  else delete document.documentElement.dataset['theme'];
  try {
    if (choice) localStorage.setItem(KEY, choice);
    else localStorage.removeItem(KEY);
  } catch {
    // Storage may be forbidden; the choice then lasts as long as the page.
  }
};

/** Brings up the choice of colours, which needs script, and keeps what is chosen on this device. */
export const startThemeToggle = (): void => {
  const group = document.querySelector<HTMLFieldSetElement>('#theme');
  if (!group) return;
  const chosen = document.documentElement.dataset['theme'] ?? '';
  for (const input of group.querySelectorAll('input')) {
    input.checked = input.value === chosen;
    input.addEventListener('change', () => {
      choose(input.value);
    });
  }
  group.hidden = false;
};
