#pragma once

#include "html/markup.h"
#include "html/setting.h"

namespace benchleaf::html {

/// The sign of a trust level with its words as alternative; noted for the sprite and the legend of the page.
Markup trust_sign(model::Trust trust, bool derived, Setting& setting);
/// The mark of a verdict and its words, or the verdict's own words when there are none.
Markup verdict(model::Verdict verdict, const Markup& content, Setting& setting);
/// The triangle of a safety message, an ornament beside the signal word.
Markup alert_triangle(Setting& setting);

/// The symbols that the page has used; empty when it used none. A symbol cannot be shared between files opened from disk.
Markup sprite(const Setting& setting);
/// The legend of the signs on this page; empty when there are none.
Markup legend(Setting& setting);
/// The legend with all signs that a book can carry.
Markup whole_legend(Setting& setting);

}  // namespace benchleaf::html
