/** From so many other sites on, a number of all of them tells a site's members of no single one. Our choice. */
export const fewestOthers = 3;
