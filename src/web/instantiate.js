/* Unpacks and compiles the program from the bytes in this script (pack.cjs). Left alone, the loader would ask for them by `fetch`,
   which the policy of the pages refuses. */
Module['instantiateWasm'] = function (imports, receive) {
  var packed = Uint8Array.from(atob(benchleafPacked), function (one) { return one.charCodeAt(0); });
  var stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'));
  new Response(stream).arrayBuffer().then(function (bytes) { return WebAssembly.instantiate(bytes, imports); })
    .then(function (made) { receive(made.instance); }, abort);
  return {};
};
