// Runs before the first paint: entries of the outline may start closed only where a script can open them. A link that stops
// at a line is read from the top, so there they stay open.
document.documentElement.classList.add("with-script");
if (new URLSearchParams(location.search).has("upto")) document.documentElement.classList.add("is-class-link");
// A link to a problem is read, not filled in: the form starts folded.
if (new URLSearchParams(location.search).has("doc")) document.documentElement.classList.add("is-linked");
