/* Compiles the program from the bytes in this script. Left alone, the loader would ask for them by `fetch`, which the policy of the
   pages refuses. */
Module['instantiateWasm'] = function (imports, receive) {
  WebAssembly.instantiate(getBinary(wasmBinaryFile), imports).then(function (made) { receive(made.instance); }, abort);
  return {};
};
