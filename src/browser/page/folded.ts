/** What a script draws in a part of the page that can be folded. */
export interface Folded {
  /** Opens it the first time that the address says something of it; once folded it stays so. */
  openIf: (isSaid: boolean) => void;
  /** Whether it is open, and so to be drawn; what is not drawn now is old when it is opened next. */
  isDrawn: () => boolean;
  /** Has the page reckon when it is opened and what stands in it is old, or not there yet. */
  listen: (update: () => void) => void;
}

/** A part of the page that is drawn only while it stands open. */
export const foldedIn = (place: HTMLDetailsElement): Folded => {
  let wasSaid = false;
  let isOld = true;
  return {
    openIf: (isSaid) => {
      if (isSaid && !wasSaid) place.open = true;
      wasSaid ||= isSaid;
    },
    isDrawn: () => {
      isOld = !place.open;
      return place.open;
    },
    listen: (update) => {
      place.addEventListener('toggle', () => {
        if (place.open && isOld) update();
      });
    },
  };
};
