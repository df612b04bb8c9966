// The program: reads the command line and runs one command. Nothing throws out of here.

#include <signal.h>

#include <cstdio>
#include <exception>
#include <new>
#include <variant>

#include "command/commands.h"
#include "command/options.h"
#include "command/terminal.h"

namespace {

using namespace benchleaf::command;

int run(const Options& options, Terminal& terminal) {
  struct Runner {
    const CommonOptions& common;
    Terminal& terminal;
    int operator()(const CheckOptions& check) const { return run_check(check, common, terminal); }
    int operator()(const BindOptions& bind) const { return run_bind(bind, common, terminal); }
    int operator()(const FindOptions& find) const { return run_find(find, common, terminal); }
    int operator()(const ReckonOptions& reckon) const { return run_reckon(reckon, common, terminal); }
    int operator()(const TicketOptions& ticket) const { return run_ticket(ticket, common, terminal); }
    int operator()(const LabelOptions& label) const { return run_label(label, common, terminal); }
    int operator()(const DraftOptions& draft) const { return run_draft(draft, common, terminal); }
    int operator()(const ChangesOptions& changes) const { return run_changes(changes, common, terminal); }
  };
  return std::visit(Runner{options.common, terminal}, options.command);
}

}  // namespace

int main(int argc, char** argv) {
  signal(SIGXFSZ, SIG_IGN);  // a file that grows beyond the user's limit is an error of writing, not the end of the program
  try {
    const auto parsed = parse_command_line(argc, argv);
    if (const auto* exit = std::get_if<EarlyExit>(&parsed)) {
      Terminal terminal{CommonOptions{}};
      terminal.data(exit->out);
      if (!exit->err.empty()) terminal.failure(exit->err);
      return terminal.finish(exit->code);
    }
    const auto& options = std::get<Options>(parsed);
    Terminal terminal(options.common);
    return run(options, terminal);
  } catch (const std::bad_alloc&) {
    std::fputs("benchleaf: out of memory\n", stderr);
  } catch (const std::exception& fault) {
    std::fprintf(stderr, "benchleaf: a fault of the program: %s\n", fault.what());
  }
  return kExitUsage;
}
