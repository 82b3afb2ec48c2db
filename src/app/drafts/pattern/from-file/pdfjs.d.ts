// The library's types are those of its main file; this is the same code, small and for older browsers.
declare module 'pdfjs-dist/legacy/build/pdf.min.mjs' {
  export * from 'pdfjs-dist';
}
