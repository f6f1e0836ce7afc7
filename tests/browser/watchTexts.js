// Run in the page. Measures from now on, in `seen`, how long the longest text is that the page's own thread turns into
// something else, in either direction, or is told or tells by message. What workers do is not seen.
(() => {
  const seen = { longest: 0, streams: 0 };
  globalThis.seen = seen;
  const note = (value) => {
    if (typeof value === 'string') seen.longest = Math.max(seen.longest, value.length);
    else if (ArrayBuffer.isView(value) || value instanceof ArrayBuffer)
      seen.longest = Math.max(seen.longest, value.byteLength);
    else if (typeof value === 'object' && value !== null && !(value instanceof Blob))
      for (const one of Object.values(value)) note(one);
  };
  const watch = (owner, name) => {
    const plain = owner[name];
    owner[name] = function (...given) {
      for (const one of given) note(one);
      const made = plain.apply(this, given);
      if (made instanceof Promise) made.then(note, () => undefined);
      else note(made);
      return made;
    };
  };
  for (const name of ['parse', 'stringify']) watch(JSON, name);
  for (const name of ['atob', 'btoa']) watch(globalThis, name);
  for (const name of ['text', 'arrayBuffer', 'bytes']) if (Blob.prototype[name]) watch(Blob.prototype, name);
  for (const name of ['text', 'json', 'arrayBuffer', 'blob']) watch(Response.prototype, name);
  watch(Worker.prototype, 'postMessage');
  const listen = Worker.prototype.addEventListener;
  Worker.prototype.addEventListener = function (...given) {
    listen.call(this, 'message', ({ data }) => note(data));
    listen.apply(this, given);
  };
  for (const name of ['readAsDataURL', 'readAsText', 'readAsArrayBuffer']) {
    const read = FileReader.prototype[name];
    FileReader.prototype[name] = function (blob) {
      seen.longest = Math.max(seen.longest, blob.size);
      read.call(this, blob);
    };
  }
  for (const name of ['CompressionStream', 'DecompressionStream']) {
    const Plain = globalThis[name];
    globalThis[name] = class extends Plain {
      constructor(format) {
        super(format);
        seen.streams++;
      }
    };
  }
})();
