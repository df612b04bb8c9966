/** An expression whose promise is kept as soon as a condition holds in the page, and broken after a minute. */
export const waited = (condition) => `new Promise((done, failed) => {
  const late = setTimeout(() => failed(new Error('waited in vain for ' + ${JSON.stringify(condition)})), 60000);
  (function look() { if (${condition}) { clearTimeout(late); done(true); } else setTimeout(look, 50); })();
})`;
