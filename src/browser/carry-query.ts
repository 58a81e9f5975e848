/** Hands the numbers in this page's address on to the substitution pages that it leads to. */

if (location.search !== '') {
  for (const anchor of document.querySelectorAll<HTMLAnchorElement>('main a[href*="/in/"]')) {
    anchor.search = location.search;
  }
}
