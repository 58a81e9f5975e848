// Sets the colours that were chosen before anything is painted; a bundled module would come too late.
try {
  const theme = localStorage.getItem('theme');
  if (theme === 'light' || theme === 'dark') document.documentElement.dataset.theme = theme;
} catch {
  // Storage may be forbidden; the page then follows the system.
}
