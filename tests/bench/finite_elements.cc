// In: a flat crystal and its load. Out: what CalculiX (program ccx) makes of it: the deck is written here, the answer is read
// from the .frd file it leaves.

#include "bench/finite_elements.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "support/temporary_folder.h"

namespace benchleaf::test {
namespace {

namespace fs = std::filesystem;

/// The six or three values that a block of the .frd file gives a node.
std::vector<double> values_of(const fs::path& frd, const std::string& block, int node) {
  std::ifstream file(frd);
  bool inside = false;
  constexpr std::size_t kStart = 13;
  constexpr std::size_t kWidth = 12;
  for (std::string line; std::getline(file, line);) {
    if (line.rfind(" -4", 0) == 0) inside = line.find(block) != std::string::npos;
    if (!inside || line.rfind(" -1", 0) != 0 || std::stoi(line.substr(3, 10)) != node) continue;
    std::vector<double> values;
    for (std::size_t at = kStart; at + kWidth <= line.size(); at += kWidth) values.push_back(std::stod(line.substr(at, kWidth)));
    return values;
  }
  return {};
}

/// Runs a deck and reads what `read` asks of the answer, zeros where there is none.
template <typename Read>
auto run_and_read(const std::string& deck, Read read) -> decltype(read(fs::path())) {
  const TemporaryFolder folder("ccx");
  std::ofstream(folder.path() / "job.inp") << deck;
  // ccx leaves files of its solver in the current folder, so it works in the one that goes away.
  const std::string command = "cd '" + folder.path().string() + "' && OMP_NUM_THREADS=1 ccx -i job > log 2>&1";
  if (std::system(command.c_str()) != 0) return {};
  return read(folder.path() / "job.frd");
}

/// Runs a deck; stress: the first component at one node, sag: a displacement at another.
Solved run(const std::string& deck, int stress_node, int sag_node, std::size_t sag_component) {
  return run_and_read(deck, [&](const fs::path& frd) -> Solved {
    const auto stress = values_of(frd, "STRESS", stress_node);
    const auto sag = values_of(frd, "DISP", sag_node);
    if (stress.empty() || sag.size() <= sag_component) return {};
    return {std::abs(stress.front()), std::abs(sag.at(sag_component))};
  });
}

std::string material_and_step(const Solid& solid, const std::string& boundary, const std::string& load) {
  std::ostringstream deck;
  deck << "*MATERIAL, NAME=M\n*ELASTIC\n"
       << solid.modulus << ", " << solid.poisson << "\n*SOLID SECTION, ELSET=E, MATERIAL=M\n*BOUNDARY\n"
       << boundary << "*STEP\n*STATIC\n*DLOAD\n"
       << load << "*NODE FILE\nU\n*EL FILE\nS\n*END STEP\n";
  return deck.str();
}

constexpr double kPi = 3.14159265358979323846;

}  // namespace

Squeezed solve_ring(const Ring& ring) {
  const int across = 24 / ring.coarser;
  constexpr double kHeight = 0.1;
  const auto id = [](int i, int j) { return i * 3 + j + 1; };
  const double inner = ring.outside / 2 - ring.wall;
  const double dr = ring.wall / (2 * across);
  std::ostringstream nodes, elements, fixed, moved;
  nodes.precision(12);
  moved.precision(12);
  for (int i = 0; i <= 2 * across; ++i) {
    for (int j = 0; j < 3; ++j) {
      if (i % 2 == 1 && j == 1) continue;
      nodes << id(i, j) << ", " << inner + i * dr << ", " << j * kHeight / 2 << ", 0\n";
      if (j == 0) fixed << id(i, j) << ", 2, 2\n";
      if (i == 2 * across) moved << id(i, j) << ", 1, 1, " << -ring.oversize / 2 << "\n";
    }
  }
  int element = 0;
  for (int i = 0; i < 2 * across; i += 2) {
    elements << ++element << ", " << id(i, 0) << ", " << id(i + 2, 0) << ", " << id(i + 2, 2) << ", " << id(i, 2) << ", "
             << id(i + 1, 0) << ", " << id(i + 2, 1) << ", " << id(i + 1, 2) << ", " << id(i, 1) << "\n";
  }
  std::ostringstream deck;
  deck << "*NODE, NSET=N\n"
       << nodes.str() << "*ELEMENT, TYPE=CAX8, ELSET=E\n"
       << elements.str() << "*MATERIAL, NAME=M\n*ELASTIC\n"
       << ring.modulus << ", " << ring.poisson << "\n*SOLID SECTION, ELSET=E, MATERIAL=M\n*BOUNDARY\n"
       << fixed.str() << "*STEP\n*STATIC\n*BOUNDARY\n"
       << moved.str() << "*NODE FILE\nU\n*EL FILE\nS\n*END STEP\n";
  return run_and_read(deck.str(), [&](const fs::path& frd) -> Squeezed {
    constexpr std::size_t kRadial = 0, kHoop = 2;
    const auto outer_stress = values_of(frd, "STRESS", id(2 * across, 0));
    const auto inner_stress = values_of(frd, "STRESS", id(0, 0));
    if (outer_stress.size() <= kHoop || inner_stress.size() <= kHoop) return {};
    return {std::abs(outer_stress[kRadial]), std::abs(inner_stress[kHoop])};
  });
}

Solved solve_disc(const Solid& solid) {
  const int across = 52 / solid.coarser;
  const int deep = 4 / solid.coarser;
  const int rows = 2 * deep + 1;
  const auto id = [rows](int i, int j) { return i * rows + j + 1; };
  const double dr = solid.radius_or_width / (2 * across);
  const double dz = solid.thickness / (2 * deep);
  std::ostringstream nodes, elements, boundary, load;
  nodes.precision(12);
  for (int i = 0; i <= 2 * across; ++i) {
    for (int j = 0; j < rows; ++j) {
      if (i % 2 == 1 && j % 2 == 1) continue;
      nodes << id(i, j) << ", " << i * dr << ", " << j * dz << ", 0\n";
      if (i == 0) boundary << id(i, j) << ", 1, 1\n";
      if (i == 2 * across && solid.clamped) boundary << id(i, j) << ", 1, 2\n";
      if (i == 2 * across && !solid.clamped && j == deep) boundary << id(i, j) << ", 2, 2\n";
    }
  }
  const double patch = solid.force > 0 ? solid.patch_radius : solid.radius_or_width;
  const double pressure = solid.force > 0 ? solid.force / (kPi * patch * patch) : solid.pressure;
  int element = 0;
  for (int i = 0; i < 2 * across; i += 2) {
    for (int j = 0; j < 2 * deep; j += 2) {
      elements << ++element << ", " << id(i, j) << ", " << id(i + 2, j) << ", " << id(i + 2, j + 2) << ", " << id(i, j + 2)
               << ", " << id(i + 1, j) << ", " << id(i + 2, j + 1) << ", " << id(i + 1, j + 2) << ", " << id(i, j + 1) << "\n";
      if (j + 2 == 2 * deep && (i + 1) * dr < patch) load << element << ", P3, " << pressure << "\n";
    }
  }
  const std::string deck = "*NODE, NSET=N\n" + nodes.str() + "*ELEMENT, TYPE=CAX8, ELSET=E\n" + elements.str() +
                           material_and_step(solid, boundary.str(), load.str());
  return run(deck, id(0, 0), id(0, deep), 1);
}

Solved solve_rectangle(const Solid& solid) {
  const int along_x = 20 / solid.coarser;  // elements across half the short side
  const int along_y = 26 / solid.coarser;
  const int along_z = 2 / solid.coarser;
  const auto id = [along_y, along_z](int i, int j, int k) { return (i * (2 * along_y + 1) + j) * (2 * along_z + 1) + k + 1; };
  const auto odd = [](int n) { return n % 2; };
  const double dx = solid.radius_or_width / 2 / (2 * along_x);
  const double dy = solid.length / 2 / (2 * along_y);
  const double dz = solid.thickness / (2 * along_z);
  std::ostringstream nodes, elements, boundary, load;
  nodes.precision(12);
  for (int i = 0; i <= 2 * along_x; ++i) {
    for (int j = 0; j <= 2 * along_y; ++j) {
      for (int k = 0; k <= 2 * along_z; ++k) {
        if (odd(i) + odd(j) + odd(k) > 1) continue;
        const int node = id(i, j, k);
        nodes << node << ", " << i * dx << ", " << j * dy << ", " << k * dz << "\n";
        const bool rim = i == 2 * along_x || j == 2 * along_y;
        if (i == 0) boundary << node << ", 1, 1\n";
        if (j == 0) boundary << node << ", 2, 2\n";
        if (rim && solid.clamped) boundary << node << ", 1, 3\n";
        if (rim && !solid.clamped && k == along_z) boundary << node << ", 3, 3\n";
        // A simple support of plate theory holds the slope along the rim as well; without it the rim of a solid twists.
        if (i == 2 * along_x && !solid.clamped) boundary << node << ", 2, 2\n";
        if (j == 2 * along_y && !solid.clamped) boundary << node << ", 1, 1\n";
      }
    }
  }
  struct Loaded {
    int element;
    double area;
  };
  std::vector<Loaded> loaded;
  int element = 0;
  for (int i = 0; i < 2 * along_x; i += 2) {
    for (int j = 0; j < 2 * along_y; j += 2) {
      for (int k = 0; k < 2 * along_z; k += 2) {
        const int n[20] = {id(i, j, k),         id(i + 2, j, k),         id(i + 2, j + 2, k),     id(i, j + 2, k),
                           id(i, j, k + 2),     id(i + 2, j, k + 2),     id(i + 2, j + 2, k + 2), id(i, j + 2, k + 2),
                           id(i + 1, j, k),     id(i + 2, j + 1, k),     id(i + 1, j + 2, k),     id(i, j + 1, k),
                           id(i + 1, j, k + 2), id(i + 2, j + 1, k + 2), id(i + 1, j + 2, k + 2), id(i, j + 1, k + 2),
                           id(i, j, k + 1),     id(i + 2, j, k + 1),     id(i + 2, j + 2, k + 1), id(i, j + 2, k + 1)};
        elements << ++element;
        for (int c = 0; c < 20; ++c) elements << (c == 10 ? ",\n" : ", ") << n[c];
        elements << "\n";
        const bool in_patch = solid.force <= 0 || std::hypot((i + 1) * dx, (j + 1) * dy) < solid.patch_radius;
        if (k + 2 == 2 * along_z && in_patch) loaded.push_back({element, 4 * dx * dy});
      }
    }
  }
  double area = 0;
  for (const auto& one : loaded) area += one.area;
  const double pressure = solid.force > 0 ? solid.force / (4 * area) : solid.pressure;
  for (const auto& one : loaded) load << one.element << ", P2, " << pressure << "\n";
  const std::string deck = "*NODE, NSET=N\n" + nodes.str() + "*ELEMENT, TYPE=C3D20R, ELSET=E\n" + elements.str() +
                           material_and_step(solid, boundary.str(), load.str());
  return run(deck, id(0, 0, 0), id(0, 0, along_z), 2);
}

}  // namespace benchleaf::test
