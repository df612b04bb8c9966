#pragma once

#include <string>
#include <vector>

#include "model/sheet.h"
#include "page/look.h"
#include "page/setting.h"
#include "page/sheet/arrange.h"
#include "page/sheet/panel.h"
#include "page/sheet/sheet_paper.h"

namespace benchleaf::page {

/// At twice the floor larger type is read no sooner.
inline constexpr double kLargestPt = 22.4;

/// Panels set at one size in a number of columns.
struct Trial {
  PanelWidth width;
  std::vector<Strip> strips;
  std::vector<PanelSize> sizes;
  Arrangement arrangement;
};

/// Sets panels with words this large, under `parent`; `air` is put into every row, one length a panel, or nothing at all.
Trial set_trial(Setting& setting, const std::vector<model::Panel>& panels, const SheetPaper& paper, double words_pt, int columns,
                TagId parent, const std::vector<Length>& air = {});

/// How one side is to be set.
struct SheetFit {
  double words_pt = kFloorPt;  ///< words and figures; trade numbers and other look-up keys are larger by their scale
  int columns = 0;
  std::vector<model::Panel> panels;     ///< those that have room
  std::vector<std::string> limited_by;  ///< titles of the panels that keep the type from being larger
  std::vector<std::string> dropped;     ///< titles of the panels that had no room
  std::vector<Length> air;              ///< room between rows, one length a panel
  double covered = 0;                   ///< share of the live area that panels cover
};

/// The largest type at which all panels fit, and the columns for it. Where they do not fit at the floor, panels go, the one
/// with the highest `keep` first; of those that went, the lowest `keep` first, each comes back that fits beside the rest.
/// For each that is out a finding says by how much it missed; when nothing may go any more, the side is an error.
SheetFit fit_side(TextSetter& text, const model::SheetSet& chart, const model::Sheet& side, const SheetPaper& paper,
                  report::Findings& findings);

}  // namespace benchleaf::page
