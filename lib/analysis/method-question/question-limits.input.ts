/** A difference of so many units in 100 would change what a grower does. Our choice. */
export const worthKnowing = 5;

/** Below so many units watched, a single one moves a curve by more than 5 in 100. Our choice. */
export const fewestWatched = 20;
