const drawing = `<g fill="none" stroke="#f7f5ef" stroke-width="4" stroke-linecap="round" stroke-linejoin="round">
<path d="M10 52h44"/><path d="M24 52c2-8 2-14 1-20"/><path d="M12 32c0-10 5-18 13-18s13 8 13 18z"/>
<path d="M46 52c1-4 1-6 .5-9"/><path d="M40 43c0-5 2.5-8 6.5-8s6.5 3 6.5 8z"/></g>`;

/**
 * The product's mark as SVG text, the one source of every icon. `maskable` fills the square and keeps the drawing
 * within the inner 80 %, which every phone's mask leaves visible (W3C, Web Application Manifest: safe zone).
 */
export function productMark(maskable: boolean): string {
  const inside = maskable ? `<g transform="translate(9.6 9.6) scale(0.7)">${drawing}</g>` : drawing;
  const corner = maskable ? '0' : '12';
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64"><rect width="64" height="64" rx="${corner}" fill="#8a3b12"/>${inside}</svg>`;
}
