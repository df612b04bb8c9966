// In: trust levels, verdicts and what the page has used of them. Out: signs beside words, the sprite they are drawn from,
// the legend.
#include "html/signs.h"

#include "html/drawings.h"
#include "model/signs.h"

namespace benchleaf::html {

namespace {

Id sign_id(model::Trust trust, bool derived) {
  return derived ? Id::of_frame("sign_derived_", model::trust_name(trust)) : Id::of_frame("sign_", model::trust_name(trust));
}

Id verdict_id(model::Verdict verdict) { return Id::of_frame("verdict_", model::verdict_words(verdict)); }

Id alert_id() { return Id::of_frame("alert_triangle"); }

ClassName verdict_class(model::Verdict verdict) {
  switch (verdict) {
    case model::Verdict::use: return "use";
    case model::Verdict::with_limits: return "with-limits";
    case model::Verdict::never: break;
  }
  return "never";
}

Markup legend_line(model::Trust trust, bool derived, std::string_view text, Setting& setting) {
  setting.signs.emplace(trust, derived);
  const model::Drawing drawing = model::trust_sign(trust, derived);
  return Element("li").add(used_symbol(sign_id(trust, derived), drawing, "sign", {})).say(text);
}

Markup legend_of(const std::set<model::Trust>& trusts, std::optional<model::Trust> barred, Setting& setting) {
  Element list("ul");
  for (model::Trust trust : trusts) list.add(legend_line(trust, false, model::trust_legend(trust), setting));
  if (barred) list.add(legend_line(*barred, true, model::derived_legend(), setting));
  const Id title = Id::of_frame("legend_title");
  return Element("section")
      .in_class("legend")
      .refer("aria-labelledby", title)
      .add(Element("h2").id(title).say("How far to trust a value"))
      .add(list);
}

}  // namespace

Markup trust_sign(model::Trust trust, bool derived, Setting& setting) {
  setting.signs.emplace(trust, derived);
  return used_symbol(sign_id(trust, derived), model::trust_sign(trust, derived), "sign", model::trust_words(trust, derived));
}

Markup verdict(model::Verdict verdict, const Markup& content, Setting& setting) {
  setting.verdicts.insert(verdict);
  Element span("span");
  span.in_class("verdict").in_class(verdict_class(verdict));
  span.add(used_symbol(verdict_id(verdict), model::verdict_mark(verdict), "mark", {}));
  return span.add(content.empty() ? words(model::verdict_words(verdict)) : content);
}

Markup alert_triangle(Setting& setting) {
  setting.alert = true;
  return used_symbol(alert_id(), model::alert_triangle(model::Ink::ink), "triangle", {});
}

Markup sprite(const Setting& setting) {
  Element svg("svg");
  svg.in_class("sprite").set("width", "0").set("height", "0").set("aria-hidden", "true");
  for (const auto& [trust, derived] : setting.signs) {
    svg.add(symbol(model::trust_sign(trust, derived), sign_id(trust, derived)));
  }
  for (model::Verdict one : setting.verdicts) svg.add(symbol(model::verdict_mark(one), verdict_id(one)));
  if (setting.alert) svg.add(symbol(model::alert_triangle(model::Ink::ink), alert_id()));
  const bool empty = setting.signs.empty() && setting.verdicts.empty() && !setting.alert;
  return empty ? Markup() : svg.markup();
}

Markup legend(Setting& setting) {
  std::set<model::Trust> trusts;
  std::optional<model::Trust> barred;
  for (const auto& [trust, derived] : setting.signs) {
    trusts.insert(trust);
    if (derived && !barred) barred = trust;
  }
  return trusts.empty() ? Markup() : legend_of(trusts, barred, setting);
}

Markup whole_legend(Setting& setting) {
  return legend_of({model::Trust::standard, model::Trust::handbook, model::Trust::dataset, model::Trust::trade,
                    model::Trust::memory, model::Trust::invented},
                   model::Trust::memory, setting);
}

}  // namespace benchleaf::html
