/** The address of how a finding about parts with a value is reckoned. */
export const findingPath = (id: string): `/${string}` => `/findings/#${id}`;

/** The same of devices, which have findings of their own. */
export const deviceFindingPath = (id: string): `/${string}` => `/findings/devices/#${id}`;
