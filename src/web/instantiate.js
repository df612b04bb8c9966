/* Unpacks and compiles the program from the text in this script (pack.cjs). Left alone, the loader would ask for it by `fetch`,
   which the policy of the pages refuses. */
Module['instantiateWasm'] = function (imports, receive) {
  var values = new Uint8Array(128), at, i;
  for (i = 0; i < benchleafSigns.length; ++i) values[benchleafSigns.charCodeAt(i)] = i;
  var packed = new DataView(new ArrayBuffer(benchleafPacked.length / 5 * 4));
  for (at = 0, i = 0; at < benchleafPacked.length; at += 5, i += 4) {
    for (var four = 0, sign = at; sign < at + 5; ++sign) four = four * 85 + values[benchleafPacked.charCodeAt(sign)];
    packed.setUint32(i, four);
  }
  var bytes = new Uint8Array(packed.buffer, 0, benchleafLength);
  var stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  new Response(stream).arrayBuffer().then(function (bytes) { return WebAssembly.instantiate(bytes, imports); })
    .then(function (made) { receive(made.instance); }, abort);
  return {};
};
