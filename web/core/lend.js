// Pyodide fetches and compiles its runtime when it gets to it; here that has long begun.

const RUNTIME = "/pyodide/pyodide.asm.wasm";

/**
 * Let Pyodide take what is there already, while `work` runs.
 * @param {Promise<WebAssembly.Module>} runtime the compiled runtime
 * @param {Record<string, () => Response>} ready answers to other files it will ask for, by the end of their address
 * @param {() => Promise<object>} work loads Pyodide
 */
export async function lending(runtime, ready, work) {
  const { fetch } = globalThis;
  const { instantiateStreaming } = WebAssembly;
  const answers = { [RUNTIME]: () => new Response(), ...ready };
  globalThis.fetch = (what, how) => {
    const name = Object.keys(answers).find((end) => String(what.url ?? what).endsWith(end));
    return name ? Promise.resolve(answers[name]()) : fetch(what, how);
  };
  WebAssembly.instantiateStreaming = async (_, imports) => {
    const module = await runtime;
    return { module, instance: await WebAssembly.instantiate(module, imports) };
  };
  try {
    return await work();
  } finally {
    globalThis.fetch = fetch;
    WebAssembly.instantiateStreaming = instantiateStreaming;
  }
}
