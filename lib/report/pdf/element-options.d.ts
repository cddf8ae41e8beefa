// The published types lag behind the library: it writes these two into the structure of a tagged document.
declare namespace PDFKit.Mixins {
  interface StructureElementOptions {
    /** What a heading of a table heads. */
    scope?: 'Row' | 'Column';
    /** Where a figure stands: left, top, right and bottom in points. */
    bbox?: [number, number, number, number];
  }
}
