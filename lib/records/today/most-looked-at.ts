/**
 * So many open batches are looked through for what is due, the latest begun first. Far above what one site has open at
 * once; who sees to more goes site by site.
 */
export const mostLookedAt = 1000;
